import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { leastSquares } from "../../src/numerics/leastSquares";
import { near } from "../near";
import reference from "../reference/leastSquares.json";

describe("agrees with R's lm()", () => {
  it.each(reference.cases)("$name", (known) => {
    const fit = leastSquares(known.rows, known.y);
    expect(fit.rank).toBe(known.rank);
    expect(fit.dropped).toEqual(known.dropped);
    near("residuals", fit.residualSumOfSquares, known.residualSumOfSquares, { relative: 1e-11 });
    for (const [i, coefficient] of known.coefficients.entries()) {
      near(`coefficient ${i}`, fit.coefficients[i] ?? 0, coefficient ?? Number.NaN, { absolute: 1e-11 });
      for (const [j, covariance] of (known.unscaledCovariance[i] ?? []).entries()) {
        const found = fit.unscaledCovariance[i]?.[j] ?? 0;
        near(`covariance ${i}, ${j}`, found, covariance ?? Number.NaN, { absolute: 1e-13 });
      }
    }
  });
});

// NIST StRD Longley (1967): deflator, GNP, unemployed, armed forces, population, year; then employed
const longley = [
  [83.0, 234289, 2356, 1590, 107608, 1947, 60323],
  [88.5, 259426, 2325, 1456, 108632, 1948, 61122],
  [88.2, 258054, 3682, 1616, 109773, 1949, 60171],
  [89.5, 284599, 3351, 1650, 110929, 1950, 61187],
  [96.2, 328975, 2099, 3099, 112075, 1951, 63221],
  [98.1, 346999, 1932, 3594, 113270, 1952, 63639],
  [99.0, 365385, 1870, 3547, 115094, 1953, 64989],
  [100.0, 363112, 3578, 3350, 116219, 1954, 63761],
  [101.2, 397469, 2904, 3048, 117388, 1955, 66019],
  [104.6, 419180, 2822, 2857, 118734, 1956, 67857],
  [108.4, 442769, 2936, 2798, 120445, 1957, 68169],
  [110.8, 444546, 4681, 2637, 121950, 1958, 66513],
  [112.6, 482704, 3813, 2552, 123366, 1959, 68655],
  [114.2, 502601, 3931, 2514, 125368, 1960, 69564],
  [115.7, 518173, 4806, 2572, 127852, 1961, 69331],
  [116.9, 554894, 4007, 2827, 130081, 1962, 70551],
];

it("NIST's hard set Longley: certified coefficients to 9 digits and residual sum of squares", () => {
  const fit = leastSquares(
    longley.map((row) => [1, ...row.slice(0, 6)]),
    longley.map((row) => row[6] ?? Number.NaN),
  );
  const certified = [
    -3482258.63459582, 15.0618722713733, -0.035819179292591, -2.02022980381683, -1.03322686717359, -0.0511041056535807,
    1829.15146461355,
  ];
  for (const [i, value] of certified.entries()) near(`B${i}`, fit.coefficients[i] ?? 0, value, { relative: 1e-9 });
  near("residuals", fit.residualSumOfSquares, 836424.055505915, { relative: 1e-9 });
});

describe("laws of least squares", () => {
  const rows = fc.array(fc.tuple(fc.integer({ min: -9, max: 9 }), fc.integer({ min: -9, max: 9 })), {
    minLength: 6,
    maxLength: 12,
  });

  it("a response made from the columns is given back, with no residual", () => {
    fc.assert(
      fc.property(rows, (pairs) => {
        const design = pairs.map(([a, b]) => [1, a, b]);
        const { coefficients, rank, residualSumOfSquares } = leastSquares(
          design,
          pairs.map(([a, b]) => 4 - 3 * a + 2 * b),
        );
        near("residual", residualSumOfSquares, 0, { absolute: 1e-22 });
        if (rank < 3) return;
        for (const [i, value] of [4, -3, 2].entries()) near(`${i}`, coefficients[i] ?? 0, value, { relative: 1e-11 });
      }),
    );
  });
});

describe("hard cases", () => {
  it("as many columns as rows leaves no residual", () => {
    const fit = leastSquares(
      [
        [1, 2],
        [3, 5],
      ],
      [1, 2],
    );
    near("first", fit.coefficients[0] ?? 0, -1, { relative: 1e-13 });
    near("second", fit.coefficients[1] ?? 0, 1, { relative: 1e-13 });
    expect(fit.residualSumOfSquares).toBe(0);
  });

  it("more columns than rows drops the last ones", () => {
    expect(leastSquares([[1, 2, 3]], [6])).toMatchObject({ rank: 1, dropped: [1, 2] });
  });

  it("a hundred columns and two thousand rows", () => {
    const design = Array.from({ length: 2000 }, (_, row) =>
      Array.from({ length: 100 }, (_, column) => (column === 0 || row % 100 === column ? 1 : 0)),
    );
    const fit = leastSquares(
      design,
      design.map((_, row) => row % 100),
    );
    expect(fit.rank).toBe(100);
    near("coefficient 57", fit.coefficients[57] ?? 0, 57, { relative: 1e-11 });
    near("its variance", fit.unscaledCovariance[57]?.[57] ?? 0, 2 / 20, { relative: 1e-11 });
  });

  // R's lm() measures what is left of a column against the column's own length (its tol, 1e-7)
  it("drops a column that is as good as dependent, whatever its unit", () => {
    const nearly = [1e-3, -1e-3, 5e-4].map((off) => [1, 1 + off * 1e-6]);
    for (const unit of [1e-6, 1, 1e6]) {
      const rows = nearly.map((row) => row.map((value) => value * unit));
      expect(leastSquares(rows, [1, 2, 4]).dropped).toEqual([1]);
    }
  });

  it("numbers that are not finite give NaN", () => {
    expect(leastSquares([[1], [1]], [1, Number.NaN]).residualSumOfSquares).toBeNaN();
    expect(leastSquares([[1], [1]], [1, Number.NaN]).coefficients[0]).toBeNaN();
  });
});
