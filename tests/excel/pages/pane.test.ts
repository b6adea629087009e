import type { Frame } from "playwright-core";
import { describe, expect, it } from "vitest";
import type { Cell } from "../../../src/nouns/cell";
import { mulch } from "../../functions/demo";
import type { FakeExcel } from "../host/fakeExcel";
import { type CellCall, calculate, ref } from "../host/functionCall";
import { change, contentOf, fill, type Workbook, workbook } from "../host/workbook";
import { functionsFile, sideBySide } from "../openExcel";
import { type Kind, openInExcel } from "./openInExcel";

const formula = '=FAIRBED.COMPARETWO(A1:A9,B1:B9,"words")';
const call: CellCall = ["COMPARETWO", ref("Trial!A1:A9"), ref("Trial!B1:B9"), "words"];
const cellC2 = { sheet: "Trial", row: 1, column: 2 };
const cellE5 = { sheet: "Trial", row: 4, column: 4 };

/** Marlpit Corner with one straw plant's cell left empty and one that holds an error value. */
function trial(): Workbook {
  const straw = mulch("Straw").map((grams, at) => (at === 2 ? null : at === 5 ? { error: "#N/A" } : grams));
  return workbook({ Trial: sideBySide(mulch("Bare soil"), straw, ["Found:", formula]), Report: [] });
}

/** Calculates the formula's cell through the page, as Excel would, and shows its answer there. */
async function calculated(excel: FakeExcel): Promise<string> {
  const [outcome] = await calculate(excel, [call], { file: functionsFile, blank: 0, addresses: true });
  const { cells } = outcome as { cells: Cell[][] };
  const value = cells[0]?.[0] ?? null;
  change(excel.book, cellC2, { value });
  return String(value);
}

/** What the open part says, with plain spaces. */
async function text(pane: Frame): Promise<string> {
  return ((await pane.getByRole("tabpanel").textContent()) ?? "").replaceAll("\u00a0", " ");
}

/** Waits until the pane says something. */
async function says(pane: Frame, words: string): Promise<void> {
  await expect.poll(() => text(pane)).toContain(words);
}

describe.each<Kind>(["on the web", "for Windows"])("the built pages in Excel %s", (kind) => {
  it("answer a cell over empty cells sent as 0, and explain it with the same words", async () => {
    const { excel, pane } = await openInExcel(kind, trial());
    const words = await calculated(excel);
    expect(words).toMatch(/^Straw gave \d+ a plant \(5 plants\) and Bare soil \d+ \(8 plants\)/);
    excel.select("C2");
    await says(pane, words.slice(0, words.indexOf(". ") + 1));
    await says(pane, "2 plants were not recorded");
    expect(await text(pane)).not.toContain("recalculate");
  });

  it("stay calm at several areas, a chart and a cell being typed in, and keep the explanation", async () => {
    const { excel, pane } = await openInExcel(kind, trial());
    await calculated(excel);
    excel.select("C2");
    await says(pane, "Straw gave");
    excel.select("A1", "C1");
    await says(pane, "Several areas are selected.");
    excel.select();
    await says(pane, "No cells are selected.");
    excel.book.editing = true;
    excel.select("C2");
    await says(pane, "A cell is being typed in.");
    expect(await text(pane)).toContain("Straw gave");
    excel.book.editing = false;
    excel.select("C2");
    await expect.poll(() => text(pane)).not.toContain("A cell is being typed in.");
  });

  it("hand their settings to the document, and are told when it does not take them", async () => {
    const { excel, pane } = await openInExcel(kind, trial());
    const save = () =>
      pane.evaluate(() => {
        const { settings } = Office.context.document;
        settings.set("crop", "courgettes");
        return new Promise((resolve) => settings.saveAsync(({ status }) => resolve(status)));
      });
    expect(await save()).toBe("succeeded");
    expect([...excel.book.settings]).toEqual([["crop", '"courgettes"']]);
    excel.book.settingsRefused = true;
    expect(await save()).toBe("failed");
  });

  it("keep the trial's answers in the document, and warn of them where the cell is explained", async () => {
    const { excel, pane } = await openInExcel(kind, trial());
    await calculated(excel);
    await pane.getByRole("tab", { name: "Trial" }).click();
    const lots = pane.getByRole("group", { name: /only one thing/ });
    await lots.getByLabel("No", { exact: true }).check();
    await says(pane, "Kept with this workbook.");
    expect(String(excel.book.settings.get("fairbed.trialNotes"))).toContain("one-difference");
    excel.book.settingsRefused = true;
    await lots.getByLabel("Yes").check();
    await says(pane, "could not be kept with this workbook");
    excel.book.settingsRefused = false;
    await lots.getByLabel("No", { exact: true }).check();
    await says(pane, "Kept with this workbook.");
    excel.select("C2");
    await pane.getByRole("tab", { name: "Explain" }).click();
    await says(pane, "Several things changed at once");
  });

  it("make a report sheet from Tell beside one of the grower's own, and write it anew on the next press", async () => {
    const { excel, pane } = await openInExcel(kind, trial());
    fill(excel.book, { sheet: "Report", row: 0, column: 0 }, [["my own notes"]]);
    await pane.getByRole("tab", { name: "Tell" }).click();
    await pane.getByRole("button", { name: "Make a report sheet" }).click();
    await says(pane, "Written on the sheet “Report 2”.");
    const title = { sheet: "Report 2", row: 0, column: 0 };
    expect(contentOf(excel.book, title)).toMatchObject({ value: "Straw against Bare soil", bold: true });
    expect([excel.book.tables.length, excel.book.charts.length]).toEqual([1, 1]);
    await pane.getByRole("button", { name: "Update the report sheet" }).click();
    await expect.poll(() => excel.book.names.get("Fairbed_report_2")).toBe("'Report 2'!A1");
    expect([...excel.book.sheets.keys()]).toEqual(["Trial", "Report", "Report 2"]);
    expect(contentOf(excel.book, { sheet: "Report", row: 0, column: 0 }).value).toBe("my own notes");
  });

  it("put a figure into a cell as a formula of its own, with its format", async () => {
    const { excel, pane } = await openInExcel(kind, trial());
    await calculated(excel);
    excel.select("C2");
    await says(pane, "Straw gave");
    await pane.getByText("All the numbers").click();
    await pane.locator("label.line", { hasText: /^Change[^ ]/ }).click();
    excel.select("E5");
    await pane.getByRole("button", { name: "Put it there" }).click();
    await expect.poll(() => contentOf(excel.book, cellE5).formula).toBe(formula.replace("words", "Change"));
    expect(contentOf(excel.book, cellE5).format).toBe("0.0%");
  });

  it("start a comparison from two selections, and say so when the sheet is protected", async () => {
    const { excel, pane } = await openInExcel(kind, trial());
    excel.book.protectedSheets.add("Report");
    for (const [at, column] of ["A1:A9", "B1:B9"].entries()) {
      excel.select(`Trial!${column}`);
      await pane
        .getByRole("button", { name: `Take ${column}` })
        .nth(at)
        .click();
    }
    excel.select("Report!A1");
    await says(pane, "Goes to Report!A1.");
    await pane.getByRole("button", { name: "Put it there" }).click();
    await says(pane, "A1 is protected.");
    excel.select("Trial!E5");
    await says(pane, "Goes to Trial!E5.");
    await pane.getByRole("button", { name: "Put it there" }).click();
    await expect.poll(() => contentOf(excel.book, cellE5).formula).toBe("=FAIRBED.COMPARETWO(A1:A9,B1:B9)");
  });

  it("share one desk and one memory of how empty cells arrive between functions and pane", async () => {
    const { excel, pane } = await openInExcel(kind, trial());
    await calculate(excel, [call], { file: functionsFile, blank: null, addresses: true });
    expect(await pane.evaluate(`globalThis[Symbol.for("fairbed.blanks")]`)).toBe("told apart");
    expect(await pane.evaluate(`typeof globalThis[Symbol.for("fairbed.desk")].ask`)).toBe("function");
  });
});

it("calls while the grower still types change nothing in the workbook, nor what the pane says", async () => {
  const { excel, pane } = await openInExcel("on the web", trial());
  const before = JSON.stringify([...excel.book.sheets].map(([name, cells]) => [name, [...cells]]));
  const said = await text(pane);
  await calculate(excel, [call, call], { file: functionsFile, blank: 0, addresses: true });
  expect(JSON.stringify([...excel.book.sheets].map(([name, cells]) => [name, [...cells]]))).toBe(before);
  expect(await text(pane)).toBe(said);
});
