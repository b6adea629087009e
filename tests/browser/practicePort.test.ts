import type { Page } from "playwright-core";
import { beforeAll, expect, it } from "vitest";
import { blankNotes } from "../../src/nouns/trialNotes";
import { openPracticePage, put, select, value } from "./practicePage";

const own = "Try your own";
let page: Page;

beforeAll(async () => {
  page = await openPracticePage();
  await put(page, [own, "H2"], 7);
  await put(page, [own, "H3"], "seven");
});

/** What the port reads, or the record with which it refuses. */
function read(reference: string, home = own): Promise<unknown> {
  return page.evaluate(([ref, sheet]) => fairbedPractice.port.read(ref, sheet).catch((trouble: unknown) => trouble), [
    reference,
    home,
  ] as const);
}

const cornerH = { sheet: own, row: 2, column: 8 };

it.each(["H2:H3", "$H$2:$H$3", "h3:h2", " H2:H3 ", "'Try your own'!H2:H3", "'TRY your own'!H2:H3"])(
  "reads %s, with the corner's place",
  async (reference) => {
    expect(await read(reference)).toEqual({ cells: [[7], ["seven"]], corner: cornerH });
  },
);

it("reads a reference on the sheet its formula stands on", async () => {
  expect(await read("B1:C2", "The trial")).toEqual({
    cells: [
      ["Bare soil", "Straw"],
      [2252, 3249],
    ],
    corner: { sheet: "The trial", row: 1, column: 2 },
  });
});

it("trims a whole column or row to the cells in use, and keeps at least one", async () => {
  expect(await read("H:H")).toMatchObject({ cells: [[null], [7], ["seven"]], corner: { row: 1, column: 8 } });
  expect(await read("3:3", "Two plants each")).toMatchObject({
    cells: [["Plant 2", 13, 38, null, "What do the two totals say?", 2]],
  });
  expect(await read("Z:Z")).toMatchObject({ cells: [[null]] });
});

it("keeps the empty cells at the end of a range given in full", async () => {
  expect(await read("H3:H5")).toMatchObject({ cells: [["seven"], [null], [null]] });
});

it("reads a formula cell's own number, not the percent it shows", async () => {
  expect(await read("F3", "Two plants each")).toMatchObject({ cells: [[2]] });
});

it.each([
  ["A1,B1", "several-areas"],
  ["nonsense", "no-such-range"],
  ["'No such sheet'!A1", "no-such-range"],
  ["XFD1", "no-such-range"],
  ["1+1", "no-such-range"],
  ["", "no-such-range"],
])("refuses %s: %s", async (reference, trouble) => {
  expect(await read(reference)).toMatchObject({ trouble });
});

it("tells the selected formula, its value and its format", async () => {
  await select(page, "Two plants each", "F3");
  expect(await page.evaluate(() => fairbedPractice.port.selection())).toEqual({
    sheet: "Two plants each",
    address: "F3",
    formula: "=FAIRBED.UPDOWN(B4,C4)",
    formulaShown: "=FAIRBED.UPDOWN(B4,C4)",
    value: 2,
    numberFormat: "0.0%",
  });
});

it("takes a merged cell by its top-left cell", async () => {
  await select(page, "The trial", "A11");
  const { address, value: shown } = await page.evaluate(() => fairbedPractice.port.selection());
  expect(address).toBe("A11");
  expect(shown).toMatch(/Invented data for practice\.$/);
});

it("writes a formula with its format, and refuses a cell that holds something unless told to", async () => {
  const write = (content: string | number, over: boolean) =>
    page.evaluate(
      ([entered, force]) =>
        fairbedPractice.port
          .write([{ sheet: "Try your own", address: "H9", content: entered, format: "0.0%" }], force)
          .then(() => fairbedPractice.settled())
          .catch((trouble: unknown) => trouble),
      [content, over] as const,
    );
  expect(await write("=1/8", false)).toBeUndefined();
  expect(await value(page, own, "H9")).toBe(0.125);
  expect(await page.evaluate(() => fairbedPractice.shown("Try your own", "H9"))).toBe("12.5%");
  expect(await write(5, false)).toEqual({ trouble: "not-empty", where: "H9" });
  expect(await value(page, own, "H9")).toBe(0.125);
  await write(5, true);
  expect(await value(page, own, "H9")).toBe(5);
});

it("writes nothing at all when one of several cells holds something", async () => {
  const refused = await page.evaluate(() =>
    fairbedPractice.port
      .write(
        [
          { sheet: "Try your own", address: "H20", content: 1, format: "General" },
          { sheet: "Try your own", address: "H2", content: 2, format: "General" },
        ],
        false,
      )
      .catch((trouble: unknown) => trouble),
  );
  expect(refused).toEqual({ trouble: "not-empty", where: "H2" });
  expect(await value(page, own, "H20")).toBe(null);
});

it("refuses to write while a cell is being typed into", async () => {
  await select(page, own, "H12");
  await page.keyboard.type("1");
  const refused = await page.evaluate(() =>
    fairbedPractice.port
      .write([{ sheet: "Try your own", address: "H14", content: 1, format: "General" }], false)
      .catch((trouble: unknown) => trouble),
  );
  expect(refused).toEqual({ trouble: "editing", where: "H14" });
  await page.keyboard.press("Escape");
});

it("formats a cell", async () => {
  await put(page, [own, "H16"], 0.5);
  await page.evaluate(() => fairbedPractice.port.format("Try your own", "H16", "0.00"));
  expect(await page.evaluate(() => fairbedPractice.shown("Try your own", "H16"))).toBe("0.50");
  await page.evaluate(() => fairbedPractice.port.format("Try your own", "H16", "General"));
  expect(await page.evaluate(() => fairbedPractice.shown("Try your own", "H16"))).toBe("0.5");
});

it("lists every formula that holds one of our calls, and no other", async () => {
  const calls = await page.evaluate(() => fairbedPractice.port.calls());
  expect(calls).toContainEqual({ sheet: "Two plants each", address: "F3", formula: "=FAIRBED.UPDOWN(B4,C4)" });
  expect(calls).toContainEqual({
    sheet: "Before planting",
    address: "B8",
    formula: "=FAIRBED.PLANTSNEEDED(B2,B3,,B5)",
  });
  expect(calls.filter(({ formula }) => !formula.includes("FAIRBED."))).toEqual([]);
});

it("reads a defined name as the cells it stands for, in any letter case", async () => {
  await page.evaluate(() => fairbedPractice.nameCells("straw", "'The trial'!$C$1:$C$2"));
  const straw = { cells: [["Straw"], [3249]], corner: { sheet: "The trial", row: 1, column: 3 } };
  expect(await read("straw")).toEqual(straw);
  expect(await read("STRAW")).toEqual(straw);
});

it("keeps the trial's notes in the browser's storage, under the workbook's name", async () => {
  const notes = { ...blankNotes, answers: { "drawn-by-lot": "no" }, crop: "courgettes" } as const;
  const kept = await page.evaluate(async (written) => {
    const before = await fairbedPractice.port.notes();
    await fairbedPractice.port.keepNotes(written);
    return { before, after: await fairbedPractice.port.notes(), keys: Object.keys(localStorage) };
  }, notes);
  expect(kept.before).toEqual(blankNotes);
  expect(kept.after).toEqual(notes);
  expect(kept.keys).toContain("fairbed.trialNotes Fairbed practice");
});

it("says so when the browser keeps nothing, and the notes before hold", async () => {
  const refused = await page.evaluate(async () => {
    const { port } = fairbedPractice;
    const before = await port.notes();
    const { setItem } = Storage.prototype;
    Storage.prototype.setItem = () => {
      throw new DOMException("no room", "QuotaExceededError");
    };
    const reason = await port.keepNotes({ ...before, crop: "beans" }).catch((trouble: unknown) => trouble);
    Storage.prototype.setItem = setItem;
    return { reason, crop: (await port.notes()).crop };
  });
  expect(refused).toEqual({ reason: { trouble: "not-kept", where: "" }, crop: "courgettes" });
});
