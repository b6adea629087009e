import { plainNumber } from "./plainNumber";

/** A percent as shown: its points, rounded, and the decimal places they are written with. */
export interface ShownPercent {
  readonly points: number;
  readonly decimals: number;
}

/**
 * Rounds a fraction to the percent that is shown (METHODS 4.5): whole points below ±100, tens above. Where that would
 * hide a small change behind "0 %", or a small rest behind "−100 %", one decimal place stays.
 */
export function shownPercent(fraction: number): ShownPercent {
  const points = fraction * 100;
  const whole = roundHalfAway(points);
  if (whole === -100 && points > -100) return { points: Math.max(-99.9, roundHalfAway(points * 10) / 10), decimals: 1 };
  if (Math.abs(whole) >= 100) return { points: roundHalfAway(points / 10) * 10, decimals: 0 };
  if (whole === 0) return { points: roundHalfAway(points * 10) / 10, decimals: 1 };
  return { points: whole, decimals: 0 };
}

/** A fraction as a percent, with a minus sign below zero: "44 %", "−14 %", "490 %". */
export function percentText(fraction: number): string {
  const { points, decimals } = shownPercent(fraction);
  return `${plainNumber(points, decimals)} %`;
}

/** The size of a change, without its sign: "14 %" of −0.14, from the figure that is shown with its sign. */
export function percentSize(change: number): string {
  return percentText(change).replace("−", "");
}

/** A fraction as a change: "+44 %", "−14 %", "0 %". */
export function signedPercent(fraction: number): string {
  return shownPercent(fraction).points > 0 ? `+${percentText(fraction)}` : percentText(fraction);
}

/** Math.round alone takes −2.5 to −2; a change and its mirror image are to show the same figure. */
function roundHalfAway(value: number): number {
  // 1.15 * 100 is 114.99999999999999: the last bits of a product are no reason to round down.
  return Math.sign(value) * Math.round(Number(Math.abs(value).toPrecision(14)));
}
