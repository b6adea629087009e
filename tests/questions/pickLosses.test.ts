import { describe, expect, it } from "vitest";
import { pickLosses } from "../../src/questions/pickLosses";
import { type Pick, smallPicks } from "./smallPicks";

/** The losses of a log of picks in July 2023 that begins with a plant that lives. */
function losses(...picks: readonly Pick[]) {
  const log = smallPicks([["B9", "2023-07-01", 250], ...picks], "plant");
  return [...pickLosses(log).values()];
}

/** 2023-07-01 as a sheet's number is 45 108. */
const july = (day: number) => 45_107 + day;

describe("a plant called lost twice", () => {
  it.each<[string, string | null, string | null, number]>([
    ["was lost on the earlier day, noted first", "2023-07-05", "2023-07-12", july(5)],
    ["was lost on the earlier day, noted last", "2023-07-12", "2023-07-05", july(5)],
    ["was lost on the one day", "2023-07-05", "2023-07-05", july(5)],
    ["was lost on the day that is known, the first", "2023-07-05", null, july(5)],
    ["was lost on the day that is known, the last", null, "2023-07-05", july(5)],
    ["was lost on a day that nobody wrote down", null, null, Number.NaN],
  ])("%s; its first note is told", (_what, one, other, day) => {
    expect(losses(["B1", one, "dead"], ["B1", other, "died"])).toMatchObject([
      { day, note: { note: "lost", text: "dead", place: { cell: "B3" } } },
    ]);
  });
});

describe("picked after the loss", () => {
  it.each<[string, readonly Pick[], number, boolean]>([
    [
      "what stands on later days adds up",
      [
        ["B1", "2023-07-06", 200],
        ["B1", "2023-07-09", 50],
      ],
      250,
      true,
    ],
    [
      "a pick of the same day or before is none",
      [
        ["B1", "2023-07-05", 200],
        ["B1", "2023-07-02", 90],
      ],
      0,
      false,
    ],
    ["a pick without a day is none", [["B1", null, 200]], 0, false],
    ["a zero says that nothing was picked", [["B1", "2023-07-09", 0]], 0, false],
    ["what was picked and not weighed counts as picked", [["B1", "2023-07-09", null]], 0, true],
    ["another plant's pick is none", [["B9", "2023-07-09", 200]], 0, false],
  ])("%s", (_what, rows, pickedLater, isPickedLater) => {
    expect(losses(["B1", "2023-07-05", "lost"], ...rows)).toMatchObject([{ pickedLater, isPickedLater }]);
  });

  it("counts from the earlier of two notes", () => {
    const twice = losses(["B1", "2023-07-12", "lost"], ["B1", "2023-07-05", "lost"], ["B1", "2023-07-09", 70]);
    expect(twice).toMatchObject([{ pickedLater: 70, isPickedLater: true }]);
  });
});

it("each lost plant has its own loss, and a log without one has none", () => {
  expect(losses(["B1", "2023-07-05", "lost"], ["B2", "2023-07-06", "dead"]).map(({ day }) => day)).toEqual([
    july(5),
    july(6),
  ]);
  expect(losses(["B1", "2023-07-05", 100])).toEqual([]);
});
