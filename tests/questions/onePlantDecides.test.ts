import { expect, it } from "vitest";
import { onePlantDecides } from "../../src/questions/onePlantDecides";
import { readTwoGroups } from "../../src/questions/readTwoGroups";
import { found, given } from "./range";

// That the plant is the right one is checked through the worksheet function, by leaving out each in turn.
function decides(usual: readonly number[], tried: readonly number[], layout: "separate" | "pairs") {
  const groups = found(readTwoGroups(given({ usual, new: tried }), { how: layout, lostPlants: "leave out" }));
  return onePlantDecides(groups, { layout, confidence: 0.95 });
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
});
