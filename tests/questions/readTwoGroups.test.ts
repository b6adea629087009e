import { expect, it } from "vitest";
import { valuesOf } from "../../src/questions/harvest";
import { emptyRange, isPaired, readTwoGroups, withLostAsZero } from "../../src/questions/readTwoGroups";
import { found, given, range } from "./range";

const leaveOut = { lostPlants: "leave out" } as const;

it("knows which ways are paired", () => {
  expect((["separate", "pairs", "equal unevenness", "ranks", "pairs ranks"] as const).filter(isPaired)).toEqual([
    "pairs",
    "pairs ranks",
  ]);
});

it("separate plants: each range by itself", () => {
  const groups = found(readTwoGroups(given({ usual: [4, "lost", 5], new: [6, 7] }), { how: "separate", ...leaveOut }));
  expect(valuesOf(groups.usualPlants)).toEqual([4, 5]);
  expect(valuesOf(groups.triedPlants)).toEqual([6, 7]);
  expect(groups.pairs).toBeNull();
});

it("pairs: complete ones side by side, incomplete ones counted, rows empty on both sides neither", () => {
  const call = given({ usual: [4, "lost", 5, null, 6, null], new: [6, 7, null, null, 8, 9] });
  const groups = found(readTwoGroups(call, { how: "pairs", ...leaveOut }));
  expect(valuesOf(groups.usualPlants)).toEqual([4, 6]);
  expect(valuesOf(groups.triedPlants)).toEqual([6, 8]);
  expect(groups.pairs).toEqual({ complete: 2, incomplete: 3 });
});

it("with lost plants as zero, a pair is complete that was not", () => {
  const call = given({ usual: [4, "lost", 5], new: [6, 7, "?"] });
  const groups = withLostAsZero(found(readTwoGroups(call, { how: "pairs", ...leaveOut })));
  expect(valuesOf(groups.usualPlants)).toEqual([4, 0]);
  expect(groups.pairs).toEqual({ complete: 2, incomplete: 1 });
  const separate = withLostAsZero(found(readTwoGroups(call, { how: "separate", ...leaveOut })));
  expect(valuesOf(separate.usualPlants)).toEqual([4, 0, 5]);
});

it.each([
  [[4, 5], [6, 7], "leave out", null],
  [["lost"], ["lost", 7], "leave out", "usual"],
  [[4, 5], ["lost", "?"], "leave out", "new"],
  [["lost", 5], [6, "lost"], "leave out", null],
  [["lost", "dead"], ["?", "?"], "count as zero", "new"],
  [["?", "?"], ["lost", "dead"], "count as zero", "usual"],
] as const)("%j against %j, lost: %s; the range without plants that count: %s", (usual, tried, lostPlants, empty) => {
  const call = { usual: { ...range("usual", usual), corner: null }, new: { ...range("new", tried), corner: null } };
  const separate = found(readTwoGroups(call, { how: "separate", lostPlants }));
  expect(emptyRange(separate, lostPlants)).toBe(empty);
});

it("of pairs that lack a partner everywhere, the second range is the one to look at", () => {
  const call = { usual: range("usual", ["lost", 5]), new: { ...range("new", [6, "lost"]), corner: null } };
  const groups = found(readTwoGroups(call, { how: "pairs", ...leaveOut }));
  expect(emptyRange(groups, "leave out")).toBe("new");
});

it("refuses a missing range, other units, and pairs of other heights", () => {
  const rule = { how: "separate", ...leaveOut } as const;
  expect(readTwoGroups(given({ new: [1] }), rule)).toEqual({ problem: "missing-argument", argument: "usual" });
  expect(readTwoGroups(given({ usual: [1] }), rule)).toEqual({ problem: "missing-argument", argument: "new" });
  const units = given({ usual: ["a (g)", 1], new: ["b (cm)", 1] });
  expect(readTwoGroups(units, rule)).toMatchObject({ problem: "units-differ", firstUnit: "g", secondUnit: "cm" });
  const heights = given({ usual: [1, 2], new: [1, 2, 3] });
  expect(readTwoGroups(heights, { ...rule, how: "pairs ranks" })).toMatchObject({ problem: "shapes-differ" });
});
