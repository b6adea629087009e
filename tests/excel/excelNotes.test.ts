import { afterEach, expect, it, vi } from "vitest";
import { excelSheet } from "../../src/host/excel/excelSheet";
import { notesKey, textOfNotes } from "../../src/host/notesText";
import { blankNotes, type TrialNotes } from "../../src/nouns/trialNotes";
import { type FakeExcel, fakeExcel } from "./host/fakeExcel";
import { officeInNode } from "./host/officeInNode";
import { workbook } from "./host/workbook";

const notes: TrialNotes = { ...blankNotes, answers: { "drawn-by-lot": "no" }, crop: "courgettes", worthwhile: 0.1 };
const notKept = { trouble: "not-kept", where: "" };
const closings: (() => void)[] = [];

afterEach(() => {
  vi.useRealTimers();
  for (const close of closings.splice(0)) close();
});

/** Opens the pane's page on a workbook; a second time is a grower who comes back to the file. */
async function open(excel: FakeExcel = fakeExcel(workbook({ Trial: [] }))): Promise<FakeExcel> {
  closings.push((await officeInNode(excel)).close);
  return excel;
}

it("a workbook in which nothing was written has blank notes", async () => {
  await open();
  expect(await excelSheet().notes()).toEqual(blankNotes);
});

it("notes are kept in the document's settings, and there when the file is opened again", async () => {
  const excel = await open();
  await excelSheet().keepNotes(notes);
  expect([...excel.book.settings]).toEqual([[notesKey, JSON.stringify(textOfNotes(notes))]]);
  await open(excel);
  expect(await excelSheet().notes()).toEqual(notes);
});

it("later notes take the place of those before, and other settings stay", async () => {
  const excel = fakeExcel(workbook({ Trial: [] }));
  excel.book.settings.set("Office.AutoShowTaskpaneWithDocument", "true");
  await open(excel);
  await excelSheet().keepNotes(notes);
  await excelSheet().keepNotes({ ...notes, answers: {}, crop: "beans" });
  await open(excel);
  expect(await excelSheet().notes()).toEqual({ ...notes, answers: {}, crop: "beans" });
  expect(excel.book.settings.get("Office.AutoShowTaskpaneWithDocument")).toBe("true");
});

it("a text that looks like office.js' own form of a date stays a text", async () => {
  const excel = await open();
  await excelSheet().keepNotes({ ...notes, place: "Date(86400000)" });
  await open(excel);
  expect((await excelSheet().notes()).place).toBe("Date(86400000)");
});

it.each([null, notes])("a refusal is told, and the notes before it hold: %o", async (before) => {
  const excel = await open();
  if (before !== null) await excelSheet().keepNotes(before);
  const kept = [...excel.book.settings];
  excel.book.settingsRefused = true;
  await expect(excelSheet().keepNotes({ ...notes, crop: "beans" })).rejects.toEqual(notKept);
  expect(await excelSheet().notes()).toEqual(before ?? blankNotes);
  expect([...excel.book.settings]).toEqual(kept);
});

it("an Excel that never answers is not waited for longer than three seconds", async () => {
  const excel = await open();
  excel.silent = true;
  vi.useFakeTimers();
  const refused = expect(excelSheet().keepNotes(notes)).rejects.toEqual(notKept);
  await vi.advanceTimersByTimeAsync(3000);
  await refused;
  expect(await excelSheet().notes()).toEqual(blankNotes);
});
