import { expect, it } from "vitest";
import { onePlantDecides } from "../../src/questions/onePlantDecides";
import { readTwoGroups } from "../../src/questions/readTwoGroups";
import { found, given } from "./range";

// That the plant is the right one is checked through the worksheet function, by leaving out each in turn.
function decides(usual: readonly number[], tried: readonly number[], layout: "separate" | "pairs", confidence = 0.95) {
  const groups = found(readTwoGroups(given({ usual, new: tried }), { how: layout, lostPlants: "leave out" }));
  return onePlantDecides(groups, { layout, confidence });
}

it("names the place, of the new plant with pairs", () => {
  const usual = [13.2, 14, 12, 15, 13.5, 14.5];
  expect(decides(usual, [14.9, 15.6, 14.2, 14.4, 15.2, 15.9], "separate")).toMatchObject({
    place: { argument: "usual", cell: "B2" },
  });
  const gains = [1, 1.4, -0.3, 1.2, 0.3, 1];
  const after = usual.map((value, pair) => value + (gains[pair] ?? 0));
  expect(decides(usual, after, "pairs")?.place.argument).toBe("new");
});

it("is null when nothing is settled, when all hold together, and when too few would be left", () => {
  expect(decides([1, 5, 9], [2, 6, 8], "separate")).toBeNull();
  expect(decides([1, 1.1, 0.9, 1], [9, 9.1, 8.9, 9], "separate")).toBeNull();
  expect(decides([10, 10.1], [20, 20.1], "separate")).toBeNull();
});

it("is null where there is no percent, or nothing varies", () => {
  expect(decides([0, 0, 0, 0], [4, 5, 6, 5], "separate")).toBeNull();
  expect(decides([4, 4, 4], [5, 5, 5], "separate")).toBeNull();
  // the amounts alone would hang on one plant: R's t.test gives p 0.029 for all four, 0.11 without the second
  expect(decides([0, 0, 0, 0], [1, 4, 5, 5], "separate")).toBeNull();
});

const alike = [10, 10, 10, 10];

// R: t.test(c(1, 1, 2, 2))$p.value is 0.0138, t.test(c(1, 1, 2))$p.value as below
it("of two plants that decide as much, the first is named", () => {
  const first = decides(alike, [11, 11, 12, 12], "separate");
  expect(first?.place).toMatchObject({ argument: "new", cell: "B4" });
  expect(first?.pWithout).toBeCloseTo(0.0571909584179366, 12);
});

it("nothing is left to speak for a difference when the other plants do not vary at all", () => {
  expect(decides(alike, [11, 11, 11, 11.2], "separate")).toMatchObject({ place: { cell: "B5" }, pWithout: 1 });
});

// R's t.test of the gains: p 0.37 for all ten, under 0.001 without the last, which points down then
it("nor when the others point the other way, however surely", () => {
  const usual = Array<number>(10).fill(30);
  const gains = [-0.1, -0.12, -0.08, -0.1, -0.11, -0.09, -0.1, -0.12, -0.08, 20];
  const tried = gains.map((gain) => 30 + gain);
  expect(decides(usual, tried, "pairs", 0.6)).toMatchObject({ place: { cell: "B11" }, pWithout: 1 });
});
