import { expect, it } from "vitest";
import { readTreatmentNames } from "../../src/questions/readTreatmentNames";
import { range } from "./range";

const names = (...cells: Parameters<typeof range>[1][]) => range("treatments", cells.flat());

it("names stand in a range, in a row or a column, spelt as typed; empty cells are none", () => {
  expect(readTreatmentNames(names("Bare soil", null, "  Straw  mulch ", ""))).toEqual(["Bare soil", "Straw mulch"]);
  const row = { ...names(null), cells: [["Bare soil", "Straw"]] };
  expect(readTreatmentNames(row)).toEqual(["Bare soil", "Straw"]);
  expect(readTreatmentNames(names(1, 2))).toEqual(["1", "2"]);
});

it("a lone cell that holds no number is no count", () => {
  expect(readTreatmentNames(names(null))).toEqual({ problem: "missing-argument", argument: "treatments" });
  expect(readTreatmentNames(names(true))).toEqual({ problem: "too-few-treatments", names: ["TRUE"] });
  expect(readTreatmentNames(names({ error: "#REF!" }))).toMatchObject({ problem: "error-for-name", given: "#REF!" });
});

it("a number of treatments gives letters", () => {
  expect(readTreatmentNames(names(3))).toEqual(["A", "B", "C"]);
  expect(readTreatmentNames(names("2"))).toEqual(["A", "B"]);
  expect(readTreatmentNames(names(20))).toHaveLength(20);
});

it.each([1, 21, 2.5, -3])("%d treatments are refused", (count) => {
  expect(readTreatmentNames(names(count))).toEqual({
    problem: "not-whole",
    argument: "treatments",
    given: count,
    low: 2,
    high: 20,
  });
});

it("names that mean the same, a lone name, too many, none and an error are refused", () => {
  expect(readTreatmentNames(names("Straw", "Bare", " STRAW"))).toEqual({ problem: "name-twice", name: "STRAW" });
  expect(readTreatmentNames(names("Straw"))).toEqual({ problem: "too-few-treatments", names: ["Straw"] });
  const many = Array.from({ length: 21 }, (_, at) => `T${at}`);
  expect(readTreatmentNames(names(many))).toEqual({ problem: "too-many-treatments", count: 21, most: 20 });
  expect(readTreatmentNames(names(null, ""))).toEqual({ problem: "missing-argument", argument: "treatments" });
  expect(readTreatmentNames(null)).toEqual({ problem: "missing-argument", argument: "treatments" });
  expect(readTreatmentNames(names("Straw", { error: "#N/A" }, "Bare"))).toMatchObject({
    problem: "error-for-name",
    place: { cell: "B3" },
    given: "#N/A",
  });
});
