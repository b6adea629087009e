/**
 * A fraction as a grower types it into a formula, with a plain hyphen: "27%", "-10%". Whole, but below 5 %
 * to two figures: from 1.4 % to 1 % a plan doubles.
 */
export function typedPercent(fraction: number): string {
  const points = fraction * 100;
  return `${Number(Math.abs(points) < 5 ? points.toPrecision(2) : points.toFixed(0))}%`;
}
