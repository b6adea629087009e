import { describe, expect, it } from "vitest";
import { bisect, falsePosition } from "../../src/numerics/root";
import { near } from "../near";

const parabola = (x: number) => x * x - 2;

describe.each([
  ["bisect", bisect],
  ["falsePosition", falsePosition],
] as const)("%s", (_name, search) => {
  it("finds √2, from a rising and a falling curve", () => {
    near("rising", search(parabola, 0, 2, 1e-15), Math.SQRT2, { relative: 1e-14 });
    near(
      "falling",
      search((x) => -parabola(x), 0, 2, 1e-15),
      Math.SQRT2,
      { relative: 1e-14 },
    );
  });

  it("finds a root below 0 and one of a very bent curve", () => {
    near("below 0", search(parabola, -2, 0, 1e-15), -Math.SQRT2, { relative: 1e-14 });
    near(
      "bent",
      search((x) => Math.exp(20 * x) - 5, -1, 2, 1e-14),
      Math.log(5) / 20,
      { relative: 1e-12 },
    );
  });

  it("takes a root at either end", () => {
    expect(search((x) => x - 1, 1, 3, 1e-12)).toBe(1);
    expect(search((x) => x - 3, 1, 3, 1e-12)).toBe(3);
  });

  it("no answer without a change of sign, or where f gives NaN", () => {
    expect(search(parabola, 2, 3, 1e-12)).toBeNaN();
    expect(search(() => Number.NaN, 0, 1, 1e-12)).toBeNaN();
    expect(search((x) => (x === 0 ? -1 : x === 1 ? 1 : Number.NaN), 0, 1, 1e-12)).toBeNaN();
  });
});

it("bisect takes the middle at once when f is 0 there", () => {
  expect(bisect((x) => x - 1, 0, 2, 0)).toBe(1);
});

it.each([
  [1e-3, 12],
  [1e-6, 22],
])("bisect to a share of %d of √2 halves a bracket of 2 some %d times", (tolerance, most) => {
  let asked = 0;
  const counted = (x: number) => {
    asked += 1;
    return parabola(x);
  };
  near("√2", bisect(counted, 0, 2, tolerance), Math.SQRT2, { relative: tolerance });
  expect(asked).toBeLessThanOrEqual(most + 2);
});

it("bisect with tolerance 0 stops at neighbouring doubles", () => {
  const root = bisect(parabola, 0, 2, 0);
  expect(Math.abs(root - Math.SQRT2)).toBeLessThanOrEqual(2 ** -52);
});

it("falsePosition needs few evaluations", () => {
  let asked = 0;
  falsePosition(
    (x) => {
      asked += 1;
      return Math.cos(x) - x;
    },
    0,
    1,
    1e-13,
  );
  expect(asked).toBeLessThan(12);
});
