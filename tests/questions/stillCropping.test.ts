import { expect, it } from "vitest";
import { stillCropping } from "../../src/questions/stillCropping";
import { type Pick, smallPicks } from "./smallPicks";

/** Of each treatment, the grams picked before the last week and those picked on the last day. */
function late(picked: Readonly<Record<string, readonly [before: number, after: number]>>) {
  const names = Object.keys(picked);
  const picks = Object.entries(picked).flatMap(([name, [before, after]]): readonly Pick[] => [
    [name, "2023-07-01", before],
    [name, "2023-08-20", after],
  ]);
  const log = smallPicks(picks, "name");
  return stillCropping(log, { names, groupOf: Int32Array.from(names.keys()) });
}

// shares by hand: the last day's grams of all grams
it.each<[string, Parameters<typeof late>[0], string | null, number]>([
  ["little of both came late", { Bare: [970, 30], Straw: [960, 40] }, null, 0],
  [
    "10 % and 5 points more than the other are the most that is little",
    { Bare: [950, 50], Straw: [900, 100] },
    null,
    0,
  ],
  ["more than 10 % of both", { Bare: [880, 120], Straw: [890, 110] }, "Bare", 0.12],
  ["more than 10 % of one", { Bare: [940, 60], Straw: [890, 110] }, "Straw", 0.11],
  ["less than 10 %, but more than 5 points above the other", { Bare: [990, 10], Straw: [930, 70] }, "Straw", 0.07],
  ["the one above comes first", { Bare: [930, 70], Straw: [990, 10] }, "Bare", 0.07],
  ["one without harvest says nothing of the other", { Bare: [0, 0], Straw: [920, 80] }, null, 0],
  ["more than 10 %, the other without harvest", { Bare: [0, 0], Straw: [800, 200] }, "Straw", 0.2],
  ["nobody bore anything", { Bare: [0, 0], Straw: [0, 0] }, null, 0],
])("%s", (_what, picked, name, share) => {
  expect(late(picked)).toEqual(name === null ? [] : [{ caution: "C09", name, share }]);
});
