import { expect } from "vitest";
import type { Known } from "../../src/nouns/known";
import { near, type Tolerance } from "../near";

/** Fails unless one end of a range is the expected number, or there is no limit where null is expected. */
export function nearEnd(what: string, end: Known, expected: number | null, tolerance: Tolerance = {}): void {
  if (expected === null || typeof end !== "number") {
    const without = typeof end === "number" ? end : null;
    expect(without, what).toBe(expected);
    return;
  }
  near(what, end, expected, tolerance);
}
