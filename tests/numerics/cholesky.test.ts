import { describe, expect, it } from "vitest";
import { inverseOf } from "../../src/numerics/cholesky";
import { near } from "../near";

describe("inverseOf", () => {
  // M.-D. Choi (1983), American Mathematical Monthly 90, 301–312: the inverse of Hilbert's matrix has whole entries
  it("inverts Hilbert's matrix of four", () => {
    const hilbert = [0, 1, 2, 3].map((i) => [0, 1, 2, 3].map((j) => 1 / (i + j + 1)));
    const expected = [
      [16, -120, 240, -140],
      [-120, 1200, -2700, 1680],
      [240, -2700, 6480, -4200],
      [-140, 1680, -4200, 2800],
    ];
    const inverse = inverseOf(hilbert);
    for (const [i, row] of expected.entries()) {
      for (const [j, entry] of row.entries()) near(`${i}, ${j}`, inverse?.[i]?.[j] ?? 0, entry, { relative: 1e-11 });
    }
  });

  // by hand: 1/det · [[c, −b], [−b, a]] with det 8
  it("reads the lower triangle only", () => {
    expect(
      inverseOf([
        [4, 99],
        [2, 3],
      ])?.flat(),
    ).toEqual([0.375, -0.25, -0.25, 0.5].map((entry) => expect.closeTo(entry, 14)));
  });

  it.each([
    [
      "dependent rows",
      [
        [1, 1],
        [1, 1],
      ],
    ],
    [
      "a negative direction",
      [
        [1, 2],
        [2, 1],
      ],
    ],
    [
      "as good as dependent, whatever the unit",
      [
        [1e6, 1e6],
        [1e6, 1e6 * (1 + 1e-12)],
      ],
    ],
    ["zero", [[0]]],
    ["not a number", [[Number.NaN]]],
  ])("has none for %s", (_, matrix) => {
    expect(inverseOf(matrix)).toBeNull();
  });
});
