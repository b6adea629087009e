/**
 * A first guess at Student's t, from the standard normal z that is exceeded with the same probability.
 *
 * @param z any finite number
 * @param df from about 20 on: there it holds six digits at the usual alphas, and more with every further degree
 *
 * Source: Abramowitz & Stegun 26.7.5, up to 1/df⁴.
 */
export function nearNormal(z: number, df: number): number {
  const s = z * z;
  const terms = [
    (s + 1) / 4,
    ((5 * s + 16) * s + 3) / 96,
    (((3 * s + 19) * s + 17) * s - 15) / 384,
    ((((79 * s + 776) * s + 1482) * s - 1920) * s - 945) / 92160,
  ];
  return z * (1 + terms.reduceRight((sum, term) => (sum + term) / df, 0));
}
