import { expect, it } from "vitest";
import type { DrawnLots } from "../../../src/nouns/findings/drawnLots";
import { settledBlock } from "../../../src/pane/record/settledBlock";
import { drawLots } from "../../../src/questions/drawLots";
import { found, given } from "../../questions/range";

const drawn: DrawnLots = found(
  drawLots(given({ treatments: ["Bare soil", "Straw"], plants_each: 4, draw_number: 1431 })),
);
const layout = { drawn, measure: "Total per plant (g)", worthwhile: 0.1, writtenOn: 46_151 };

/** The days and values of question and stop date. */
function rows(question: string, stopDate: number | null) {
  const { rows: all } = settledBlock({ ...layout, question, stopDate });
  return ["Question", "Stop date"].map((label) => {
    const row = all.find(([cell]) => cell?.content === label);
    return [row?.[3]?.content ?? null, row?.[4]?.content ?? null];
  });
}

it("a date says that something was settled", () => {
  expect(rows("Does straw give more?", 46_264)).toEqual([
    [46_151, "Does straw give more?"],
    [46_151, 46_264],
  ]);
});

it("what is still open has no date", () => {
  expect(rows("", null)).toEqual([
    [null, null],
    [null, null],
  ]);
});
