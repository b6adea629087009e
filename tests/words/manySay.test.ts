import { expect, it } from "vitest";
import type { Verdict } from "../../src/nouns/verdict";
import { manySay } from "../../src/words/manySay";
import { against, manyTreatments, pair, treatment } from "./manyRecords";

type Judged = readonly [name: string, verdict: Verdict, change?: number];

/** What may be said of treatments set against bare soil, the highest average first. */
const said = (judged: readonly Judged[], lessWanted = false) =>
  manySay(
    manyTreatments({
      usual: "bare soil",
      worthwhile: { size: 0.1, lessWanted, given: true },
      treatments: judged.map(([name, verdict, change = 0.4]) => {
        const changeRange = { low: change - 0.2, high: change + 0.2 };
        return treatment({ name, plants: 8, mean: 3, againstUsual: against({ change, changeRange, verdict }) });
      }),
    }),
  );

it.each([
  ["up-small", "Straw gave a little more than bare soil here. It was not enough for us to act on."],
  ["down-small", "Straw gave a little less than bare soil here. It was not enough for us to act on."],
  ["up-unclear", "Straw gave more than bare soil in our trial. How much more is still open."],
  ["down-unclear", "Straw gave less than bare soil in our trial. How much less is still open."],
  ["leaning-up", "Straw is ahead of bare soil so far. With so few plants, it is only a hint."],
] as const)("%s: says which way, and how far", (verdict, sentence) => {
  expect(said([["straw", verdict]])).toBe(sentence);
});

it("says how much where it is enough to matter", () => {
  expect(said([["straw", "up-enough", 0.4]])).toBe(
    "Straw gave 40 % more per plant than bare soil here. The true gain may be anything from 20 % to 60 %.",
  );
  expect(said([["straw", "down-enough", -0.4]])).toBe(
    "Straw gave 40 % less per plant than bare soil here. The true loss may be anything from 20 % to 60 %.",
  );
});

it("keeps the direction of a change too small to be shown, where so little is enough to matter", () => {
  expect(said([["straw", "up-enough", 0.0001]])).toContain("Straw gave hardly more per plant than bare soil here.");
  expect(said([["straw", "down-enough", -0.0001]])).toContain("Straw gave hardly less per plant than bare soil here.");
});

it("speaks of the one that is clearly ahead, and of one that is behind only where none is ahead", () => {
  expect(
    said([
      ["straw", "up-unclear"],
      ["bark", "down-unclear"],
    ]),
  ).toContain("Straw gave more");
  expect(
    said([
      ["straw", "open"],
      ["bark", "down-unclear"],
    ]),
  ).toContain("Bark gave less");
  expect(
    said([
      ["straw", "open"],
      ["bark", "leaning-up"],
    ]),
  ).toContain("Bark is ahead of bare soil");
});

it("speaks of the lowest first where less is wanted", () => {
  expect(
    said(
      [
        ["straw", "up-unclear"],
        ["bark", "down-unclear"],
      ],
      true,
    ),
  ).toContain("Bark gave less");
  expect(
    said(
      [
        ["straw", "up-unclear"],
        ["bark", "open"],
      ],
      true,
    ),
  ).toContain("Straw gave more");
  expect(
    said(
      [
        ["straw", "leaning-up"],
        ["bark", "leaning-down"],
      ],
      true,
    ),
  ).toBe("Bark is lower than bare soil so far. With so few plants, it is only a hint.");
});

it("says that they came out close, or have no answer, only where that holds for every one", () => {
  const open = "Our trial could not tell any of them from bare soil.";
  expect(
    said([
      ["straw", "level"],
      ["bark", "level"],
    ]),
  ).toBe("They all came out close to bare soil here.");
  expect(
    said([
      ["straw", "level"],
      ["bark", "open"],
    ]),
  ).toBe(open);
  expect(
    said([
      ["straw", "none"],
      ["bark", "none"],
    ]),
  ).toBe("We have no answer in percent this season.");
  expect(
    said([
      ["straw", "none"],
      ["bark", "open"],
    ]),
  ).toBe(open);
});

it("gives no hint where less is wanted and nothing is settled", () => {
  expect(said([["straw", "open"]], true)).toBe("Our trial could not tell any of them from bare soil.");
});

it("says that pairs could not be told apart where none is shown to differ", () => {
  const pairs = [pair("straw", "bark", 0.3)];
  expect(
    manySay(manyTreatments({ usual: null, treatments: [treatment({ name: "straw", plants: 8, mean: 3 })], pairs })),
  ).toBe("Our trial could not tell the treatments apart.");
});
