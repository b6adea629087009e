import { expect, it } from "vitest";
import { lossesLeftOut } from "../../src/questions/lossesLeftOut";
import { sample } from "./range";

// by hand: averages 12 and 15 without the lost plants; with them as 0, 12 · 2/3 = 8 and 15 · 3/4 = 11.25
it.each([
  ["of the usual", ["lost"], [], 15 / 8 - 1],
  ["of the new", [], ["dead"], 11.25 / 12 - 1],
  ["of both", ["lost"], ["dead"], 11.25 / 8 - 1],
])("lost plants %s, counted as zero, change both averages as they should", (_what, usualLost, triedLost, asZero) => {
  const [usual, tried] = [sample("usual", [11, 13, ...usualLost]), sample("new", [14, 15, 16, ...triedLost])];
  expect(lossesLeftOut(usual, tried, 0.25)).toMatchObject([
    { caution: "C03", change: 0.25, changeLostAsZero: expect.closeTo(asZero, 12), countedAsZero: false },
    { caution: "C04" },
  ]);
});

it("is silent where no plant was lost, though some were not recorded", () => {
  expect(lossesLeftOut(sample("usual", [11, 13]), sample("new", [14, "forgot"]), 0.17)).toEqual([]);
});
