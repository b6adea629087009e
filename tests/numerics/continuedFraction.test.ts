import { expect, it } from "vitest";
import { continuedFraction } from "../../src/numerics/continuedFraction";
import { near } from "../near";

it("1 + 1/(1 + 1/(1 + …)) is the golden ratio", () => {
  const ratio = continuedFraction(
    () => 1,
    () => 1,
  );
  near("ratio", ratio, (1 + Math.sqrt(5)) / 2, { relative: 1e-15 });
});

// Lord Brouncker's fraction, 4/π = 1 + 1²/(2 + 3²/(2 + …)), settles too slowly; DLMF 4.25.3 for the tangent does not
it("tan 1 = 1/(1 − 1/(3 − 1/(5 − …)))", () => {
  const reciprocal = continuedFraction(
    () => -1,
    (k) => 2 * k + 1,
  );
  near("tan 1", 1 / reciprocal, Math.tan(1), { relative: 1e-15 });
});

it("a zero on the way does no harm: 0 + 1/(2 + 1/(2 + …)) = √2 − 1, and 2 + 1/(0 + 1/(2 + 1/(2 + …))) = 3 + √2", () => {
  const first = continuedFraction(
    () => 1,
    (k) => (k === 0 ? 0 : 2),
  );
  const second = continuedFraction(
    () => 1,
    (k) => (k === 1 ? 0 : 2),
  );
  near("first", first, Math.SQRT2 - 1, { relative: 1e-14 });
  near("second", second, 3 + Math.SQRT2, { relative: 1e-14 });
});

it("no answer for a fraction that never settles, or made of NaN", () => {
  const brokenUp = continuedFraction(
    () => -1,
    () => 1,
  );
  expect(brokenUp).toBeNaN();
  const unknown = continuedFraction(
    () => Number.NaN,
    () => 1,
  );
  expect(unknown).toBeNaN();
});
