// @vitest-environment jsdom
import { beforeEach, expect, it, vi } from "vitest";
import { theDesk } from "../../../src/answers/theDesk";
import { logHeadings } from "../../../src/host/practice/workbook/cleanLog";
import { messyLog } from "../../../src/host/practice/workbook/messyLog";
import { check } from "../../../src/pane/check/check";
import type { Context } from "../../../src/pane/context";
import { watch } from "../../../src/pane/watch";
import { type MemorySheet, memorySheet } from "../memorySheet";
import { settled } from "../startedPane";

const whole = `A1:G${messyLog.length + 1}`;
let sheet: MemorySheet;
let root: HTMLElement;
let announced: string[];
let open: () => void;

/** The messy log of the demo in A1:G332, and formulas that read it in I1:I3. */
beforeEach(async () => {
  sheet = memorySheet(theDesk);
  sheet.fill("A1", [logHeadings, ...messyLog.map((row) => logHeadings.map((_, at) => row[at] ?? null))]);
  await sheet.enter("I1", `=FAIRBED.LOOKOVER(${whole})`);
  await sheet.enter("I2", '=FAIRBED.TALLYPICKS(C1:C332,A1:A332,F1:F332,"words",D1:D332)');
  await sheet.enter("I3", '=FAIRBED.LOOKOVER(F1:F332,,"amount",0,600)');
  root = document.createElement("div");
  document.body.replaceChildren(root);
  announced = [];
  const context: Context = {
    sheet,
    desk: theDesk,
    ...watch(sheet),
    comparisons: async () => 1,
    announce: (text) => announced.push(text),
  };
  await settled();
  open = check(context, root);
});

async function select(address: string): Promise<void> {
  vi.useFakeTimers();
  sheet.click(address);
  await vi.advanceTimersByTimeAsync(200);
  vi.useRealTimers();
  await settled();
}

async function look(address: string): Promise<void> {
  await select(address);
  open();
  await settled();
}

const said = () => root.textContent.replaceAll("\u00a0", " ");
const finding = () => root.querySelector(".finding")?.textContent;
const headings = () => [...root.querySelectorAll("h2")].map(({ textContent }) => textContent);
const line = (place: string) =>
  [...root.querySelectorAll<HTMLButtonElement>("button.look")].find(
    (button) => button.querySelector("b")?.textContent === place,
  );

it("says of a selected block what LOOKOVER says in a cell", async () => {
  await look(whole);
  expect(finding()).toBe(`${sheet.at("I1")?.value}.`);
  expect(said()).toContain(`=FAIRBED.LOOKOVER(Mulch!${whole})`);
  expect(announced).toEqual([finding()]);
});

it("what needs a look stands by kind, worst first, with LOOKOVER's own counts", async () => {
  await look(whole);
  const lines = (await table()).map(([what, count]) => `${what}: ${count}`);
  expect(headings().slice(0, 6)).toEqual(lines.slice(0, 6));
  expect(headings().slice(0, 2)).toEqual(["Unreadable: 1", "Possible totals or averages: 2"]);
});

/** LOOKOVER's own table of the same block. */
async function table(): Promise<readonly (readonly unknown[])[]> {
  const { cells, corner } = await sheet.read(whole, "Mulch");
  const show = { argument: "show", cells: [["table"]], corner: null, zerosVerified: true };
  const reply = theDesk.ask("LOOKOVER", [{ argument: "cells", cells, corner, zerosVerified: true }, show]);
  return "problem" in reply ? [] : (reply.table().slice(1) as readonly (readonly unknown[])[]);
}

it("each line says where, what stands there and what to do", async () => {
  await look(whole);
  expect(line("A72")?.textContent).toBe("A72 5/7: 5 July or 7 May Type it as year, month, day, such as 2023-07-05.");
  expect(line("D49")?.textContent).toContain("bare (1), Bare soil (");
  expect(line("D49")?.textContent).toContain("Read as two names.");
  expect(line("D35")?.textContent).toContain("Read as one name.");
});

it("choosing a line selects its cell, and what was found stays and marks it", async () => {
  await look(whole);
  line("F60")?.click();
  await settled();
  await select("F60");
  expect((await sheet.selection()).address).toBe("F60");
  expect(finding()).toBe(`${sheet.at("I1")?.value}.`);
  expect([...root.querySelectorAll("[aria-current]")].map(({ textContent }) => textContent?.slice(0, 3))).toEqual([
    "F60",
  ]);
});

it("a mended cell leaves the list, without a press", async () => {
  await look(whole);
  expect(headings()[0]).toBe("Unreadable: 1");
  vi.useFakeTimers();
  sheet.fill("A72", [["2023-07-05"]]);
  await vi.advanceTimersByTimeAsync(200);
  vi.useRealTimers();
  await settled();
  expect(headings()[0]).toBe("Possible totals or averages: 2");
});

it("of a formula it checks the table that it reads, and never writes a cell", async () => {
  const write = vi.spyOn(sheet, "write");
  await look("I2");
  expect(said()).toContain("=FAIRBED.LOOKOVER(Mulch!A1:F332)");
  await look("I3");
  expect(said()).toContain('=FAIRBED.LOOKOVER(F1:F332,,"amount",0,600)');
  expect(finding()).toBe(`${sheet.at("I3")?.value}.`);
  expect(write).not.toHaveBeenCalled();
});

const press = async (text: string) => {
  [...root.querySelectorAll("button")].find(({ textContent }) => textContent === text)?.click();
  await settled();
};

it("a single cell without a formula offers the table that it stands in, and that is checked from then on", async () => {
  await look("D40");
  await press("Check the table around D40");
  expect(finding()).toBe(`${sheet.at("I1")?.value}.`);
  await select("F60");
  expect(finding()).toBe(`${sheet.at("I1")?.value}.`);
  await look("N2");
  await press("Check the table around N2");
  expect(said()).toContain("Nothing stands around N2. Click into a table.");
});

it("what was read for certain is told too, in a fold", async () => {
  await look(whole);
  const fold = [...root.querySelectorAll("details")].find(({ textContent }) => textContent === "Read for certain");
  fold?.setAttribute("open", "");
  fold?.dispatchEvent(new Event("toggle"));
  expect(line("F14")?.textContent).toBe("F14 0.235kg = 235 g Read as a number. A unit belongs in the heading.");
});

it("says what is in the way when the sheet cannot be read", async () => {
  await look(whole);
  vi.useFakeTimers();
  sheet.refuse({ trouble: "editing", where: "" });
  await vi.advanceTimersByTimeAsync(200);
  vi.useRealTimers();
  await settled();
  expect(root.querySelector(".note:not([role])")?.textContent).toContain("Press Enter to finish");
});

it("writes a clean copy on a sheet of its own when asked, says where, and leaves the log alone", async () => {
  await look(whole);
  const before = await sheet.read(whole, "Mulch");
  const fold = [...root.querySelectorAll("details")].find(({ textContent }) => textContent?.startsWith("A clean copy"));
  fold?.setAttribute("open", "");
  fold?.dispatchEvent(new Event("toggle"));
  const chosen = [...root.querySelectorAll("select")].map((select) => select.selectedOptions[0]?.textContent);
  expect(chosen).toEqual(["one row per pick or per plant", "plant", "mulch", "bed"]);
  await press("Write a clean copy");
  expect(sheet.added).toEqual(["Clean copy"]);
  expect(root.querySelector(".note[role=status]")?.textContent).toMatch(
    /^The clean copy stands on the sheet “Clean copy”, with \d+ changes listed\. \d+ cells are in doubt/,
  );
  expect(["A1", "F14", "I1"].map((address) => sheet.at(address, "Clean copy")?.value)).toEqual(["date", 235, "Plant"]);
  expect((await sheet.read(whole, "Mulch")).cells).toEqual(before.cells);
});

it("of a table with treatments across it says so, and how to turn it", async () => {
  const across = [
    ["plant", "Straw", "Bare soil"],
    [1, 310, 290],
    [2, 300, "280*"],
  ];
  sheet.fill("M50", across);
  await look("M50:O52");
  expect(said()).toContain("Treatments seem to stand across. A clean copy, below, makes one row of each.");
});
