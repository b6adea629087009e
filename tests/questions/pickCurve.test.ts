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

it("a row of totals is in no curve, has none of its own, and is counted with the rows without a treatment", () => {
  const treatments = ["x", "y", null, "Total", "x"];
  const dates = ["2023-07-01", "2023-07-01", "2023-07-01", "2023-07-01", "2023-07-08"];
  const curve = found(pickCurve(given({ treatments, dates, amounts: [5, 6, 2, 13, 4] })));
  expect(curve.treatments.map(({ name, running }) => [name, running])).toEqual([
    ["x", [5, 9]],
    ["y", [6, 6]],
  ]);
  expect(curve.leftOut).toBe(2);
});

it("a treatment picked without a harvest has neither a half nor a last week", () => {
  const none = given({ treatments: ["x", "y"], dates: ["2023-07-01", "2023-07-08"], amounts: [5, 0] });
  expect(found(pickCurve(none)).treatments[1]).toMatchObject({ running: [0, 0], lastWeek: null, halfBy: null });
});

it("of several treatments, the one still cropping is named with its share", () => {
  const dates = ["2023-07-01", "2023-07-02", "2023-07-01", "2023-07-20"];
  const late = given({ treatments: ["x", "x", "y", "y"], dates, amounts: [5, 5, 6, 2] });
  // of 8 of y, 2 came in the last seven days
  expect(found(pickCurve(late)).cautions()).toContainEqual({ caution: "C09", name: "y", share: 0.25 });
});
