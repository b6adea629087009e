import { expect } from "vitest";

/** How far a number may be from the expected one: the wider of the two bounds holds. */
export interface Tolerance {
  /** Share of the expected value's size; 1e-10 when left out. */
  readonly relative?: number;
  /** Distance in the value's own unit; 1e-300 when left out, so that an expected 0 wants a 0 (or a subnormal). */
  readonly absolute?: number;
}

/**
 * Fails, naming the thing, unless actual lies within the tolerance of expected. NaN is near NaN only, and an
 * infinity near itself only.
 *
 * @param what the thing compared, as the failure message should call it
 */
export function near(what: string, actual: number, expected: number, tolerance: Tolerance = {}): void {
  if (Object.is(actual, expected) || actual === expected) return;
  const { relative = 1e-10, absolute = 1e-300 } = tolerance;
  const apart = Math.abs(actual - expected);
  const allowed = Number.isFinite(expected) ? Math.max(absolute, relative * Math.abs(expected)) : 0;
  if (apart <= allowed) return;
  const share = apart / Math.abs(expected);
  expect.fail(`${what}: ${actual} is not near ${expected}; apart ${apart} (relative ${share}), allowed ${allowed}`);
}
