import { readFileSync } from "node:fs";
import type { Locator, Page } from "playwright-core";
import { beforeAll, expect, it } from "vitest";
import type { BookSheet } from "../../src/files/book";
import { openBook } from "../../src/files/open/openBook";
import { blankNotes, type TrialNotes } from "../../src/nouns/trialNotes";
import { answered } from "../files/answered";
import { texts } from "../files/excelFile";
import { knowing } from "../files/knowing";
import { sheetCells } from "../files/sheetCells";
import { near } from "../near";
import lots from "../reference/drawLots.json";
import harvest from "../reference/practiceCells.json";
import { chartDots } from "./chartDots";
import { grownOn } from "./grownOn";
import { openPracticePage, ready, select, selected, settled, type, value } from "./practicePage";

const [, , two] = lots.cases.plans;
const notes: TrialNotes = { ...blankNotes, crop: "courgettes", place: "Marlpit Corner" };
let page: Page;
let pane: Locator;
let copy: Uint8Array;

beforeAll(async () => {
  page = await openPracticePage();
  // high enough for the report's chart to be in sight
  await page.setViewportSize({ width: 1366, height: 1200 });
  page.on("dialog", (dialog) => void dialog.accept().catch(() => undefined));
  pane = page.locator("#pane");
});

/** The texts of column A of a report, line by line. */
async function report(sheet = "Report"): Promise<readonly string[]> {
  const cells = await page.evaluate(async (name) => (await fairbedPractice.port.read("A1:A80", name)).cells, sheet);
  return cells.map(([cell]) => String(cell ?? ""));
}

/** What stands below a heading of the report, up to the next empty row. */
async function below(heading: string, sheet = "Report"): Promise<string> {
  const lines = await report(sheet);
  const from = lines.indexOf(heading) + 1;
  return lines.slice(from, lines.indexOf("", from)).join(" ");
}

async function openPart(name: string): Promise<void> {
  await pane.getByRole("tab", { name }).click();
}

it("plan and layout: two mulches in eight beds, drawn by lot onto a record sheet", async () => {
  await page.evaluate((written) => fairbedPractice.port.keepNotes(written), notes);
  await openPart("Plan");
  await pane.getByText("Draw lots and make the record sheet").click();
  await pane.getByLabel("Plants I have room for").fill("16");
  await pane.getByLabel("Ways to compare").selectOption("2");
  await pane.getByLabel("Beds", { exact: true }).selectOption("one each");
  await expect.poll(() => pane.getByLabel("Plants of each").inputValue()).toBe("8");
  await pane.getByLabel("The usual way").fill("Bare soil");
  await pane.getByLabel("New way 1", { exact: true }).fill("Straw");
  await pane.getByLabel("Draw number").fill("1431");
  await pane.getByLabel("The question").fill("Does straw give more?");
  await pane.getByRole("button", { name: "Draw lots and make the sheet" }).click();
  await expect.poll(() => selected(page)).toBe("Trial plan!E13");
});

it("harvest: typed down the list, compared bed by bed", async () => {
  await page.keyboard.press("F6");
  for (const weight of grownOn(two?.order ?? [])) await type(page, String(weight));
  await settled(page);
  expect(await value(page, "Trial plan", "J6")).toBe("Up, enough to matter");
});

it("tell: one press makes a report sheet whose answer is the cell's, and whose figures are R's", async () => {
  await select(page, "Trial plan", "J6");
  await openPart("Tell");
  await pane.getByRole("button", { name: "Make a report sheet" }).click();
  await expect.poll(() => selected(page)).toBe("Report!A1");
  expect((await report())[0]).toBe("Straw against Bare soil: courgettes, Marlpit Corner");
  expect(await below("The question")).toBe("Does straw give more?");
  expect(await below("The answer in short")).toBe(await value(page, "Trial plan", "J10"));
  const laidOut = await below("How the trial was laid out");
  expect(laidOut).toContain("We drew lots for which plant got what (draw number 1431).");
  expect(laidOut).toMatch(/Not said, so this report is not complete: the season\.$/);
  const straw = (await report()).indexOf("Straw") + 1;
  near("change", Number(await value(page, "Report", `G${straw}`)), harvest.cases.pairedChange, { relative: 1e-9 });
  await expect.poll(async () => (await chartDots(page)).dots).toBeGreaterThan(1000);
});

it("a late weighing changes the answer, and an update writes the same sheet anew", async () => {
  await select(page, "Trial plan", `E${13 + (two?.order.indexOf("Straw") ?? 0)}`);
  await type(page, "8000");
  await settled(page);
  const before = await below("The answer in short");
  await pane.getByRole("button", { name: "Update the report sheet" }).click();
  await expect.poll(() => below("The answer in short")).not.toBe(before);
  expect(await below("The answer in short")).toBe(await value(page, "Trial plan", "J10"));
  expect(await page.evaluate(() => fairbedPractice.port.ownSheets())).toEqual(["Report"]);
});

it("the copy that is saved holds the report: its texts, figures, mark, and a chart of Excel's own kind", async () => {
  const lines = await report();
  const [download] = await Promise.all([page.waitForEvent("download"), page.locator("#file-save").click()]);
  copy = readFileSync(await download.path());
  const { book } = answered(openBook(copy, knowing));
  const cells = sheetCells(book.sheets.find(({ name }) => name === "Report"));
  expect(lines.map((_, at) => String(cells[`A${at + 1}`]?.value ?? ""))).toEqual(lines);
  expect(book.names).toContainEqual({ name: "Fairbed_report_2", reference: "Report!$A$1" });
  expect(texts(copy)["xl/charts/chart1.xml"]).toContain("<c:v>Straw</c:v>");
});

/** What the work that this browser keeps has in the report's cell H1. */
function keptNote(): Promise<unknown> {
  return page.evaluate(
    () =>
      new Promise((resolve) => {
        const opening = indexedDB.open("fairbed-practice");
        opening.addEventListener("success", () => {
          const asked = opening.result.transaction("unsaved").objectStore("unsaved").get("work");
          asked.addEventListener("success", () => {
            opening.result.close();
            const sheets: readonly BookSheet[] = asked.result?.present.sheets ?? [];
            resolve(
              sheets
                .find(({ name }) => name === "Report")
                ?.rows.get(0)
                ?.get(7)?.value,
            );
          });
        });
      }),
  );
}

it("after a reload the unsaved report is back, its chart too, and can be updated", async () => {
  await select(page, "Report", "H1");
  await type(page, "my note");
  // unsaved work is kept a moment after the last change
  await expect.poll(keptNote, { timeout: 10_000 }).toBe("my note");
  await page.reload();
  await ready(page);
  expect(await value(page, "Report", "H1")).toBe("my note");
  await select(page, "Report", "A1");
  await expect.poll(async () => (await chartDots(page)).dots).toBeGreaterThan(1000);
  await openPart("Tell");
  await pane.getByRole("button", { name: "Update the report sheet" }).click();
  await expect.poll(() => value(page, "Report", "H1")).toBe(null);
});

it("in a file that was opened the report stays as the file has it: the new one stands beside it", async () => {
  const file = { name: "Season.xlsx", mimeType: "", buffer: Buffer.from(copy) };
  await page.locator("#file-choice").setInputFiles(file);
  await expect.poll(() => page.locator("#file-name").textContent(), { timeout: 30_000 }).toBe("Season.xlsx.");
  const before = await report();
  await openPart("Plan");
  await openPart("Tell");
  await pane.getByRole("button", { name: "Update the report sheet" }).click();
  await expect.poll(() => selected(page)).toBe("Report 2!A1");
  expect(await report()).toEqual(before);
  expect(await page.evaluate(() => fairbedPractice.port.ownSheets())).toEqual(["Report 2"]);
});
