import { expect, it } from "vitest";
import { pickCurve } from "../../src/questions/pickCurve";
import { codes, found, given } from "./range";

const call = given({
  treatments: ["x", "y", null, "x", "x"],
  dates: ["2023-07-01", "2023-07-02", "2023-07-03", "soon", "2023-07-20"],
  amounts: [5, 6, 1, 2, "?"],
});

it("counts the rows that are in no curve, and those without an amount", () => {
  const { leftOut, weightsMissing, steps, treatments } = found(pickCurve(call));
  expect([leftOut, weightsMissing]).toEqual([2, 1]);
  expect(steps.map((step) => step - 45108)).toEqual([0, 7, 14, 19]);
  expect(treatments.map(({ halfBy }) => halfBy)).toEqual([0, 1]);
});

it("tells what to look out for", () => {
  expect(codes(found(pickCurve(call)).cautions())).toEqual(["C09", "C37", "C20", "C12"]);
  expect(codes(found(pickCurve({ ...call, ...given({ plants_each: 4 }) })).cautions())).not.toContain("C37");
});
