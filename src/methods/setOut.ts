/** Keeps a quotient that is whole but for rounding from being rounded up. */
const SLACK = 1e-9;

/**
 * How many plants of each treatment to set out so that enough live to the end.
 *
 * @param needed plants of each treatment that must live
 * @param losses the share expected to be lost, in [0, 1)
 * @param beds how many beds, each holding as many of every treatment; "one each" and null: no multiple is wanted
 * @returns whole, a multiple of beds
 */
export function setOut(needed: number, losses: number, beds: number | "one each" | null): number {
  const plants = Math.ceil(needed / (1 - losses) - SLACK);
  return typeof beds === "number" ? Math.ceil(plants / beds) * beds : plants;
}
