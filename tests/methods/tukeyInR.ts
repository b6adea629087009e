/** How far R's studentized range is from the truth. */
interface TukeyError {
  /** Of ptukey(), absolute. */
  readonly p: number;
  /** Of qtukey(0.95, …), relative. */
  readonly critical: number;
}

/**
 * The error of R's ptukey() and qtukey() for up to 12 averages, as measured against exact integration. The degrees of
 * freedom that R was measured at are whole; in between the worse neighbour counts.
 */
export function errorOfTukeyInR(df: number): TukeyError {
  const known: readonly (readonly [from: number, p: number, critical: number])[] = [
    [12, 1e-8, 1e-7],
    [8, 1e-6, 1e-6],
    [5, 2e-5, 2e-5],
    [4, 5e-5, 5e-5],
    [3, 2e-4, 2e-4],
  ];
  const [, p = 2e-3, critical = 2e-3] = known.find(([from]) => df >= from) ?? [];
  return { p, critical };
}
