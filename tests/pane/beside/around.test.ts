import { expect, it } from "vitest";
import { theDesk } from "../../../src/answers/theDesk";
import { findCalls } from "../../../src/formula/findCalls";
import type { SheetTrouble } from "../../../src/host/sheet";
import { ask } from "../../../src/pane/ask";
import { around } from "../../../src/pane/beside/around";
import type { Context } from "../../../src/pane/context";
import { memorySheet } from "../memorySheet";

const formula = "=FAIRBED.COMPARETWO(A1:A5,B1:B5)";

const busy: SheetTrouble = { trouble: "unreadable", where: "" };

async function aroundIt(count: () => Promise<number>, unread = false) {
  const sheet = memorySheet(theDesk);
  sheet.fill("A1", [
    ["Bare soil", "Straw", "Date"],
    [2000, 3000, 45_474],
    [2500, 3900, 45_474],
    [2200, 3100, 45_477],
    [2600, 4000, 45_477],
  ]);
  const context = { sheet, desk: theDesk, comparisons: count } as Partial<Context> as Context;
  const [call] = findCalls(formula);
  if (call === undefined) throw new Error("no call");
  const asked = await ask(call, { sheet, desk: theDesk, home: "Mulch" });
  if (unread) sheet.read = () => Promise.reject(busy);
  return around({ call, home: "Mulch", asked }, context);
}

it("six comparisons or more in the workbook are told of, and dates that repeat beside the plants (METHODS 9.2)", async () => {
  expect((await aroundIt(() => Promise.resolve(5))).cautions).toEqual([{ caution: "C02" }]);
  expect((await aroundIt(() => Promise.resolve(6))).cautions).toEqual([
    { caution: "C02" },
    { caution: "C36", comparisons: 6 },
  ]);
});

it("what cannot be read adds nothing, and takes nothing away from the rest", async () => {
  expect((await aroundIt(() => Promise.reject(busy))).cautions).toEqual([{ caution: "C02" }]);
  expect((await aroundIt(() => Promise.resolve(6), true)).cautions).toEqual([{ caution: "C36", comparisons: 6 }]);
  expect((await aroundIt(() => Promise.reject(busy), true)).cautions).toEqual([]);
});

it("a programmer's mistake is thrown on", async () => {
  await expect(aroundIt(() => Promise.reject(new TypeError("a slip")))).rejects.toThrow("a slip");
});
