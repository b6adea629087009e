import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { excelFile, sheetPart } from "../files/excelFile";
import { openPracticePage } from "./practicePage";

/** The practice page, which says yes to whatever the browser asks. */
export async function openFilesPage(): Promise<Page> {
  const page = await openPracticePage();
  page.on("dialog", (dialog) => void dialog.accept().catch(() => undefined));
  return page;
}

/** Chooses a file as the open button does. */
export async function choose(page: Page, name: string, content: Uint8Array): Promise<void> {
  await page.locator("#file-choice").setInputFiles({ name, mimeType: "", buffer: Buffer.from(content) });
}

/** Waits until the file is open. */
export function opened(page: Page, name: string): Promise<void> {
  return expect.poll(() => page.locator("#file-name").textContent(), { timeout: 30_000 }).toBe(`${name}.`);
}

/** Waits until the page says so of its file. */
export function says(page: Page, sentence: RegExp): Promise<void> {
  return expect.poll(() => page.locator("#file-status").textContent(), { timeout: 30_000 }).toMatch(sentence);
}

/** Presses a button and answers with the file that comes of it. */
export async function downloaded(page: Page, button: string): Promise<{ name: string; bytes: Uint8Array }> {
  const [download] = await Promise.all([page.waitForEvent("download"), page.locator(button).click()]);
  return { name: download.suggestedFilename(), bytes: readFileSync(await download.path()) };
}

const weights = [
  [10, 15],
  [11, 16],
  [12, 18],
  [9, 14],
];
const rows = weights.map(
  ([usual = 0, other = 0], at) =>
    `<row r="${at + 2}"><c r="A${at + 2}"><v>${usual}</v></c><c r="B${at + 2}"><v>${other}</v></c></row>`,
);
const harvest = sheetPart(
  `<row r="1"><c r="A1" s="1" t="s"><v>2</v></c><c r="B1" s="1" t="s"><v>1</v></c>` +
    `<c r="C1" cm="1"><f t="array" ref="C1">_xldudf_FAIRBED_UPDOWN(A2,B2)</f><v>0.5</v></c>` +
    `<c r="D1"><f>SUM(A2:A5)</f><v>42</v></c><c r="E1"><f>_xldudf_OTHER_MAGIC(A2)</f><v>7</v></c>` +
    `<c r="F1" s="2"><v>46145</v></c></row>${rows.join("")}`,
  { after: '<conditionalFormatting sqref="A1"><cfRule type="duplicateValues" priority="1"/></conditionalFormatting>' },
);
/** Two sheets with what this page works out, what only Excel can, and a rule for cells that look alike. */
export const harvestFile = excelFile({
  sheets: [
    ["Harvest", harvest],
    ["&lt;img src=x onerror=alert(1)&gt;", sheetPart('<row r="1"><c r="A1"><v>1</v></c></row>')],
  ],
  parts: { "xl/metadata.xml": metadata() },
});

function metadata(): string {
  return '<metadata xmlns="m"><metadataTypes count="1"><metadataType name="OTHER"/></metadataTypes></metadata>';
}

/** A file long enough for a press on Cancel to come in time. */
export function large(): Uint8Array {
  const many = Array.from({ length: 60_000 }, (_, at) => `<row r="${at + 1}"><c r="A${at + 1}"><v>1</v></c></row>`);
  return excelFile({ sheets: [["S", sheetPart(many.join(""))]] });
}
