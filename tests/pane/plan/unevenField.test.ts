// @vitest-environment jsdom
import { expect, it } from "vitest";
import { theDesk } from "../../../src/answers/theDesk";
import type { Cell } from "../../../src/nouns/cell";
import type { Context } from "../../../src/pane/context";
import { unevenField } from "../../../src/pane/plan/unevenField";
import { watch } from "../../../src/pane/watch";
import { memorySheet } from "../memorySheet";
import { settled } from "../startedPane";

/** The field after these cells were taken as plants of the grower's own. */
async function measured(cells: readonly Cell[]) {
  const sheet = memorySheet(theDesk);
  sheet.fill(
    "A1",
    cells.map((cell) => [cell]),
  );
  sheet.click(`A1:A${cells.length}`);
  const context: Context = { sheet, desk: theDesk, ...watch(sheet), comparisons: async () => 1, announce: () => {} };
  await settled();
  const field = unevenField(context, () => {});
  const select = field.root.querySelector("select");
  if (select === null) throw new Error("no choice");
  select.value = "own";
  select.dispatchEvent(new Event("change"));
  field.root.querySelector("button")?.click();
  await settled();
  return field.unevenness();
}

it("of plants that differ is the cautious end of what they show, as the cell has it", async () => {
  // METHODS 5.4: with four plants the upper 80 % limit; χ² at 10 % with 3 df is 0.584 (printed tables), so √(3/0.584) times.
  const unevenness = await measured([20, 30, 40, 30]);
  expect(unevenness).toBeCloseTo((Math.sqrt(200 / 3) / 30) * Math.sqrt(3 / 0.58437), 4);
});

it.each([
  [[5, 5, 5], /^These plants are all equal, so they do not tell how plants differ\. Select others\.$/],
  [[7], /one plant/],
  [["lost", "lost"], /plants/],
] as const)("of %j is a sentence", async (cells, sentence) => {
  expect(await measured(cells)).toMatch(sentence);
});
