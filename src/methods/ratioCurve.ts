/** A test of "the new average is r times the usual one", for every r: what percentRange.ts walks along. */
export interface RatioCurve {
  readonly usualMean: number;
  readonly triedMean: number;
  /** Whether the test speaks against this ratio (0 or more); the ratios it does not exclude make the range. */
  readonly excludes: (ratio: number) => boolean;
  /** Fieller's g: the squared relative reach of the usual average's own range. At 1 or more a percent means little. */
  readonly g: number;
}

/** A test whose critical value is the same for every ratio. */
export interface SteadyTest {
  readonly usualMean: number;
  readonly triedMean: number;
  /** Excluded is a ratio whose gap exceeds this many standard errors. */
  readonly critical: number;
  /** The variance of the new average − r times the usual one, in the values' unit squared. */
  readonly varianceAt: (ratio: number) => number;
  /** The variance of the usual average, in the same unit. */
  readonly usualVariance: number;
}

/**
 * The curve of a test with one critical value: Student's, paired, Dunnett's or Tukey's.
 *
 * Source: E. C. Fieller (1954), Journal of the Royal Statistical Society B 16, 175–185.
 */
export function steadyRatio(test: SteadyTest): RatioCurve {
  const { usualMean, triedMean, critical, varianceAt, usualVariance } = test;
  const reach = critical ** 2;
  const excludes = (ratio: number) => (triedMean - ratio * usualMean) ** 2 > reach * varianceAt(ratio);
  return { usualMean, triedMean, excludes, g: (reach * usualVariance) / usualMean ** 2 };
}
