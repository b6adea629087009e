/** A fraction as a grower types it into a formula, with a plain hyphen: "27%", "-10%". */
export function typedPercent(fraction: number): string {
  return `${Number((fraction * 100).toFixed(Math.abs(fraction) < 0.01 ? 2 : 0))}%`;
}
