import { expect, it } from "vitest";
import { isProblem } from "../../src/nouns/problem";
import { noPercent, upDown } from "../../src/questions/upDown";
import { codes, found, given } from "./range";

it("tells two single figures from two ranges", () => {
  const single = found(upDown(given({ usual: 24, new: 72 })));
  expect(single).toMatchObject({ single: true, change: 2, changeRange: { low: { absent: "single-figures" } } });
  const several = found(upDown(given({ usual: ["Bare (g)", 24, 25], new: 72 })));
  expect(several).toMatchObject({ single: false, names: { usual: "Bare", tried: null }, unit: "g" });
});

const many = [10, 11, 12, 11.5];
it.each([
  ["nothing but place and season", many, [11, 12, 13, 12.5], ["C12"]],
  ["few plants", [10, 11, 12], many, ["C01", "C12"]],
  ["half the usual at 0", [0, 0, 8, 9, 0], many, ["C05", "C12"]],
  ["an odd one", [10, 11, 12, 60, 11], [11, 12, 13, 12], ["C06", "C12"]],
  ["a lost plant", [...many, "lost"], many, ["C03", "C04", "C12"]],
  ["more than twice as much", many, [31, 32, 33, 34], ["C16", "C12"]],
  ["a mark", ["~10", 11, 12, 11.5], many, ["C14", "C12"]],
])("%s", (_what, usual, tried, due) => {
  const raised = codes(found(upDown(given({ usual, new: tried }))).cautions());
  for (const code of due) expect(raised).toContain(code);
  if (due.length === 1) expect(raised).toEqual(due);
});

it("single figures raise no caution about plants", () => {
  expect(codes(found(upDown(given({ usual: 24, new: 72 }))).cautions())).toEqual(["C16", "C12"]);
});

it("a usual of 0 has amounts, no percent, and says why", () => {
  const found = upDown(given({ usual: [0, 0], new: [4, 6] }));
  if (isProblem(found)) throw new Error(found.problem);
  expect(found).toMatchObject({ usualMean: 0, triedMean: 5, change: { absent: "usual-not-above-zero" } });
  expect(noPercent(found)).toEqual({ problem: "usual-zero", tried: 5 });
});

it("says which of the two is missing", () => {
  expect(upDown(given({ new: 4 }))).toEqual({ problem: "missing-argument", argument: "usual" });
  expect(upDown(given({ usual: 4 }))).toEqual({ problem: "missing-argument", argument: "new" });
});

it("refuses units that differ, a harvest below zero", () => {
  expect(upDown(given({ usual: "4 g", new: "4 cm" }))).toMatchObject({ problem: "units-differ" });
  expect(upDown(given({ usual: 4, new: -1 }))).toMatchObject({ problem: "negative-amount" });
});
