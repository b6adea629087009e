import { expect, it } from "vitest";
import { readPlanted, repeatedLabels } from "../../src/questions/planted";
import { range } from "./range";

const planted = (cells: Parameters<typeof range>[1]) => readPlanted(range("planted", cells), false);

it("is null when left out or empty", () => {
  for (const nothing of [null, undefined, range("planted", null), range("planted", "")])
    expect(readPlanted(nothing, false)).toBeNull();
});

it("is the whole number typed, as a number or as text", () => {
  expect(planted(6)).toEqual({ plants: 6, repeated: false });
  expect(planted("6")).toEqual({ plants: 6, repeated: false });
  expect(planted(5.5)).toMatchObject({ problem: "not-whole", low: 1 });
  expect(planted("six")).toEqual({ problem: "planted-unclear", given: "six" });
});

it("is the number of different labels, which may be numbers", () => {
  expect(planted(["B1-1", "B1 - 1", "b1-2"])).toEqual({ plants: 2, repeated: true });
  expect(planted([1, 2, null, 3])).toEqual({ plants: 3, repeated: false });
  expect(planted([null, ""])).toEqual({ problem: "missing-argument", argument: "planted" });
});

it("counts labels that stand side by side in one row", () => {
  const row = { ...range("planted", null), cells: [["B1-1", "B1-2", "B2-1"]] };
  expect(readPlanted(row, false)).toEqual({ plants: 3, repeated: false });
});

it("a heading is no plant, and an empty cell in its place is none either", () => {
  expect(readPlanted(range("planted", ["Plant", "B1-1", "B1-2"]), true)).toEqual({ plants: 2, repeated: false });
  expect(readPlanted(range("planted", [null, "B1-1", "B1-2"]), true)).toEqual({ plants: 2, repeated: false });
});

it("C02 is raised by a label that comes twice", () => {
  expect(repeatedLabels({ plants: 2, repeated: true })).toEqual([{ caution: "C02" }]);
  expect(repeatedLabels({ plants: 2, repeated: false })).toEqual([]);
  expect(repeatedLabels(null)).toEqual([]);
});
