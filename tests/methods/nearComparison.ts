import type { MeanComparison } from "../../src/methods/meanComparison";
import { near, type Tolerance } from "../near";

/** Fails unless all seven figures agree. */
export function nearComparison(actual: MeanComparison, expected: MeanComparison, tolerance: Tolerance = {}): void {
  near("difference", actual.difference, expected.difference, tolerance);
  near("low", actual.low, expected.low, tolerance);
  near("high", actual.high, expected.high, tolerance);
  near("standard error", actual.standardError, expected.standardError, tolerance);
  near("t", actual.t, expected.t, tolerance);
  near("df", actual.df, expected.df, tolerance);
  near("p-value", actual.pValue, expected.pValue, tolerance);
}
