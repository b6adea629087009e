import { afterAll, beforeAll, expect, it } from "vitest";
import handbook from "../reference/handbook.json";
import { at, cell, type Id } from "./call";
import { demoPlants, mulch } from "./demo";

const TOLD_APART = Symbol.for("fairbed.blanks");
const memory = globalThis as { [TOLD_APART]?: string };
beforeAll(() => {
  memory[TOLD_APART] = "told apart";
});
afterAll(() => {
  delete memory[TOLD_APART];
});

const [bare, straw, woodchip, grass] = ["Bare soil", "Straw", "Woodchip", "Grass clippings"].map(mulch);
const amounts = demoPlants.map(({ grams }) => grams);
const treatments = demoPlants.map(({ treatment }) => treatment);
const beds = demoPlants.map(({ bed }) => bed);
const { plantgrowthTwo, plantgrowthTrt1, insectsDvC, darwinPaired, tiny2, tiny3 } = handbook.cases;

/** A call and what it is an example of; its *show* is left to the test. */
type Call = readonly [what: string, id: Id, before: readonly unknown[], after?: readonly unknown[]];

const calls: readonly Call[] = [
  ["pods of two plants, told as one figure each", "UPDOWN", [24, 72]],
  ["a fall of a quarter", "UPDOWN", [4, 3]],
  ["nothing from the new", "UPDOWN", [8, 0]],
  ["straw and bare soil", "UPDOWN", [bare, straw]],
  ["two plants each", "UPDOWN", [tiny2.inputs.usual, tiny2.inputs.new]],
  ["straw with its lost plant", "PERPLANT", [straw]],
  ["grass with a lost plant as zero", "PERPLANT", [grass], [8, "count as zero"]],
  ["a season total", "PERPLANT", [["Netting", 655]], [30]],
  ["all lost", "PERPLANT", [["Marrow", "lost", "dead"]]],
  ["four mulches", "UNEVENNESS", [amounts], [treatments]],
  ["four mulches, within beds", "UNEVENNESS", [amounts], [treatments, beds]],
  ["a slip of the pen", "UNEVENNESS", [at("Trial!C1:C6", ["Straw", 4, 5, 6, 5.5, 55])]],
  ["copied numbers", "UNEVENNESS", [[5, 5, 5]]],
  ["straw, separate plants", "COMPARETWO", [bare, straw]],
  ["straw, in beds", "COMPARETWO", [bare, straw], ["beds"]],
  ["woodchip, in beds", "COMPARETWO", [bare, woodchip], ["beds"]],
  ["grass, lost plant as zero", "COMPARETWO", [bare, grass], [null, null, null, "count as zero"]],
  ["plant growth, second treatment", "COMPARETWO", [plantgrowthTwo.inputs.usual, plantgrowthTwo.inputs.new]],
  ["plant growth, first treatment", "COMPARETWO", [plantgrowthTrt1.inputs.usual, plantgrowthTrt1.inputs.new]],
  ["insects, of which fewer are wanted", "COMPARETWO", [insectsDvC.inputs.usual, insectsDvC.inputs.new], [null, -0.1]],
  ["Darwin's maize", "COMPARETWO", [darwinPaired.inputs.usual_self, darwinPaired.inputs.new_cross], ["pairs"]],
  ["two plants each", "COMPARETWO", [tiny2.inputs.usual, tiny2.inputs.new]],
  ["three plants each", "COMPARETWO", [tiny3.inputs.usual, tiny3.inputs.new]],
  ["no plants", "COMPARETWO", [at("Trial!B2:B4", ["lost", "lost", "?"]), [4, 5, 6]]],
  [
    "a usual that bore nothing",
    "COMPARETWO",
    [
      [0, 0, 0, 0],
      [4, 5, 6, 5],
    ],
  ],
  [
    "equal numbers",
    "COMPARETWO",
    [
      [5, 5, 5, 5],
      [5, 5, 5, 5],
    ],
  ],
  ["a hoped-for 30 %", "PLANTSNEEDED", [0.3, 0.25]],
  ["a hoped-for 50 %, general unevenness, in beds", "PLANTSNEEDED", [0.5, null], [4, "one each"]],
  ["a change too small to see", "PLANTSNEEDED", [0.03, 0.4]],
  ["eight plants each", "SMALLESTCHANGE", [8, 0.3]],
  ["two plants each", "SMALLESTCHANGE", [2, 0.3]],
  ["six plants each, less wanted", "SMALLESTCHANGE", [6, 0.25], [null, null, null, "less"]],
  ["six plants each", "CHANCETOSEE", [0.5, 6, 0.3]],
  ["a small trial", "CHANCETOSEE", [0.2, 4, null]],
  ["two mulches, separate plants", "DRAWLOTS", [["Bare soil", "Straw"], 6, 1431]],
  ["four, one each in three beds", "DRAWLOTS", [4, 3, 7], ["one each"]],
  ["no number yet", "DRAWLOTS", [4, 8, null]],
];

it("words, say and cautions of typical calls, as a grower reads them", async () => {
  const text = calls.map(([what, id, before, after = []]) => {
    const shown = ["words", "say", "cautions"].map(
      (show) => `  ${show}: ${String(cell(id, ...before, show, ...after))}`,
    );
    return `${id}: ${what}\n${shown.join("\n")}`;
  });
  await expect(`${text.join("\n\n")}\n`).toMatchFileSnapshot("approved/texts.txt");
});

it("words have 60 words at most; place and season come last among the cautions", () => {
  for (const [what, id, before, after = []] of calls) {
    const [words = "", say, cautions] = ["words", "say", "cautions"].map((show) =>
      String(cell(id, ...before, show, ...after)),
    );
    expect(words.split(/\s+/).filter((word) => /\p{L}/u.test(word)).length, what).toBeLessThanOrEqual(60);
    expect(cautions, what).toMatch(/One place, one season\.$/);
    expect(say, what).not.toBe("");
  }
});
