import { describe, it } from "vitest";
import { near } from "../near";
import reference from "../reference/distributions.json";

/** How closely a routine must agree. */
export interface Agreement {
  /** Relative, with the 25-digit answers. */
  readonly truth: number;
  /** Relative, with R. */
  readonly r: number;
  /** Absolute, with R, where R itself promises no more than absolute accuracy. */
  readonly rAbsolute?: number;
  /** Whether R answers exactly here; everywhere when left out. */
  readonly rIsExact?: (...given: number[]) => boolean;
}

/** Compares a routine with every row of its grid in tests/reference/distributions.json (see distributions.R). */
export function agreesOnGrid(
  name: keyof typeof reference.cases,
  routine: (...given: number[]) => number,
  agreement: Agreement,
): void {
  const rows = reference.cases[name];
  describe(`${name}, ${rows.length} points`, () => {
    it("agrees with the 25-digit answers", () => {
      for (const { given, truth } of rows) {
        near(`${name}(${given})`, routine(...given.map(number)), Number(truth), { relative: agreement.truth });
      }
    });

    it("agrees with R", () => {
      const tolerance = { relative: agreement.r, absolute: agreement.rAbsolute ?? 1e-300 };
      const { rIsExact = () => true } = agreement;
      for (const { given, r } of rows.filter((row) => rIsExact(...row.given.map(number)))) {
        near(`${name}(${given})`, routine(...given.map(number)), r, tolerance);
      }
    });
  });
}

/** write.R spells the numbers JSON has no word for. */
export function number(written: number | string): number {
  return written === "Inf" ? Number.POSITIVE_INFINITY : Number(written);
}
