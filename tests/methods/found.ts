import type { Absence, Known } from "../../src/nouns/known";

/** The record of figures, or a failure that names why there is none. */
export function found<Figures extends object>(figures: Figures | Absence): Figures {
  if ("absent" in figures) throw new Error(`no figures: ${figures.absent}`);
  return figures;
}

/** The figure, or a failure that names why there is none. */
export function figure(known: Known): number {
  if (typeof known !== "number") throw new Error(`no figure: ${known.absent}`);
  return known;
}
