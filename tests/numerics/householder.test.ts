import { expect, it } from "vitest";
import { reflect } from "../../src/numerics/householder";
import { near } from "../near";

// The worked example of QR that textbooks share: columns (12, 6, −4), (−51, 167, 24), (4, −68, −41)
it("makes the triangle of the textbook example: 14 · −21 175 · 14 −70 35, signs aside", () => {
  const columns = [
    [12, 6, -4],
    [-51, 167, 24],
    [4, -68, -41],
  ].map((column) => Float64Array.from(column));
  const { kept, triangle } = reflect(columns, Float64Array.from([1, 0, 0]));
  expect(kept).toEqual([0, 1, 2]);
  const expected = [[14], [21, 175], [14, 70, 35]];
  for (const [j, column] of expected.entries()) {
    for (const [i, entry] of column.entries()) {
      near(`${i}, ${j}`, Math.abs(triangle[j]?.[i] ?? 0), entry, { relative: 1e-13 });
    }
  }
});

it("keeps the response's length", () => {
  const { rotated } = reflect([Float64Array.from([1, 2, 2])], Float64Array.from([3, 4, 12]));
  near("length", Math.hypot(...rotated), 13, { relative: 1e-14 });
  near("along the column", Math.abs(rotated[0] ?? 0), (3 + 8 + 24) / 3, { relative: 1e-14 });
});

it("keeps no column that is zero or that earlier ones make up", () => {
  const columns = [
    [0, 0, 0],
    [1, 1, 1],
    [2, 2, 2],
    [1, 2, 3],
  ].map((column) => Float64Array.from(column));
  expect(reflect(columns, Float64Array.from([1, 2, 3])).kept).toEqual([1, 3]);
});
