import { expect, it } from "vitest";
import { theDesk } from "../../../src/answers/theDesk";
import { findCalls } from "../../../src/formula/findCalls";
import { ask } from "../../../src/pane/ask";
import { planningPicture } from "../../../src/pane/explain/planningPicture";
import type { Mark } from "../../../src/pane/plots/picture";
import { signedPercent } from "../../../src/words/percent";
import { memorySheet } from "../memorySheet";

/** What the cell shows, and the name of the plan in the picture below its explanation. */
async function planned(formula: string) {
  const [call] = findCalls(formula);
  if (call === undefined) throw new Error("no call");
  const asked = await ask(call, { sheet: memorySheet(theDesk), desk: theDesk, home: "Plan" });
  if (asked.outcome !== "answer") throw new Error(asked.outcome);
  const marks = planningPicture(asked.answer.finding, theDesk)?.marks ?? [];
  const texts = marks.filter((mark): mark is Extract<Mark, { mark: "text" }> => mark.mark === "text");
  const named = texts.find(({ text }) => text.startsWith("your plan"))?.text;
  return { shown: asked.answer.cell()[0]?.[0], named };
}

it.each([
  "=FAIRBED.SMALLESTCHANGE(12,30%)",
  "=FAIRBED.SMALLESTCHANGE(12,30%,,,,95%)",
  '=FAIRBED.SMALLESTCHANGE(12,30%,,3,3,60%,"less")',
])("%s: the picture shows the change that the cell shows", async (formula) => {
  const { shown, named } = await planned(formula);
  expect(named).toBe(`your plan: 12 each, ${signedPercent(Number(shown))}`);
});

it.each(["=FAIRBED.PLANTSNEEDED(30%,25%,,,,80%)", "=FAIRBED.PLANTSNEEDED(30%,25%,,,,95%)"])(
  "%s: with the plants needed, the change hoped for just shows",
  async (formula) => {
    const { named } = await planned(formula);
    const [, each, percent] = /(\d+) each, \+(\d+) %/.exec(named ?? "") ?? [];
    expect(Number(percent)).toBeLessThanOrEqual(30);
    // One plant each fewer would show less than 30 %: the fewest that do show hardly less.
    expect(Number(percent)).toBeGreaterThanOrEqual(28);
    expect(Number(each)).toBeGreaterThan(10);
  },
);

it("a change that no plan shows has no picture", async () => {
  expect((await planned("=FAIRBED.PLANTSNEEDED(1%,200%)")).named).toBeUndefined();
});
