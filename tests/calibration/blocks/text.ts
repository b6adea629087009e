import type { PlantKind } from "../plants/drawPlant";

/** Trials a case where a promise hangs on it. */
export const PROMISED = 20_000;
/** Trials a case that is told without a promise. */
export const TOLD = 5000;

/** A fraction as the page writes it: "35 %". */
export function percent(fraction: number): string {
  return `${Math.round(1000 * fraction) / 10} %`;
}

/** A true change with its sign; "none" for 0. */
export function changeText(change: number): string {
  if (change === 0) return "none";
  return change > 0 ? `+${percent(change)}` : `−${percent(-change)}`;
}

/** What the plants' numbers are. */
export function kindText(kind: PlantKind): string {
  return { gamma: "weights", lognormal: "weights, long tail", counts: "counts" }[kind];
}
