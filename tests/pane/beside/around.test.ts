import { expect, it } from "vitest";
import { theDesk } from "../../../src/answers/theDesk";
import { findCalls } from "../../../src/formula/findCalls";
import { ask } from "../../../src/pane/ask";
import { around } from "../../../src/pane/beside/around";
import type { Context } from "../../../src/pane/context";
import { memorySheet } from "../memorySheet";

const formula = "=FAIRBED.COMPARETWO(A1:A5,B1:B5)";

async function aroundIt(count: () => Promise<number>, change: Partial<Context> = {}) {
  const sheet = memorySheet(theDesk);
  sheet.fill("A1", [
    ["Bare soil", "Straw", "Date"],
    [2000, 3000, 45_474],
    [2500, 3900, 45_474],
    [2200, 3100, 45_477],
    [2600, 4000, 45_477],
  ]);
  const context = { sheet, desk: theDesk, comparisons: count, ...change } as Partial<Context> as Context;
  const [call] = findCalls(formula);
  if (call === undefined) throw new Error("no call");
  return around({ call, home: "Mulch", asked: await ask(call, { sheet, desk: theDesk, home: "Mulch" }) }, context);
}

it("six comparisons or more in the workbook are told of, and dates that repeat beside the plants (METHODS 9.2)", async () => {
  expect((await aroundIt(() => Promise.resolve(5))).cautions).toEqual([{ caution: "C02" }]);
  expect((await aroundIt(() => Promise.resolve(6))).cautions).toEqual([
    { caution: "C02" },
    { caution: "C36", comparisons: 6 },
  ]);
});

it("a workbook that cannot be read adds nothing", async () => {
  expect((await aroundIt(() => Promise.reject(new Error("busy")))).cautions).toEqual([]);
});
