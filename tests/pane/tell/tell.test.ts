// @vitest-environment jsdom
import { beforeEach, expect, it, vi } from "vitest";
import { theDesk } from "../../../src/answers/theDesk";
import { blankNotes } from "../../../src/nouns/trialNotes";
import type { Context } from "../../../src/pane/context";
import { tell } from "../../../src/pane/tell/tell";
import { watch } from "../../../src/pane/watch";
import { mulch } from "../../functions/demo";
import { type MemorySheet, memorySheet } from "../memorySheet";
import { settled } from "../startedPane";

let sheet: MemorySheet;
let root: HTMLElement;
let open: () => void;

/** Marlpit Corner in A1:B9, straw in B, with three formulas that ask one question and two that ask others. */
beforeEach(async () => {
  sheet = memorySheet(theDesk);
  const straw = mulch("Straw");
  sheet.fill(
    "A1",
    mulch("Bare soil").map((grams, at) => [grams, straw[at] ?? null]),
  );
  await sheet.enter("D1", '=FAIRBED.COMPARETWO(A1:A9,B1:B9,"answer","beds")');
  await sheet.enter("D2", '=FAIRBED.COMPARETWO(A1:A9,B1:B9,"Change","beds")');
  await sheet.enter("D3", '=FAIRBED.COMPARETWO(A1:A9,B1:B9,"say","beds")');
  await sheet.enter("D4", "=FAIRBED.COMPARETWO(A1:A9,B1:B9)");
  await sheet.enter("D5", "=FAIRBED.UNEVENNESS(A1:A9)");
  sheet.click("D2");
  root = document.createElement("div");
  document.body.replaceChildren(root);
  const context: Context = { sheet, desk: theDesk, ...watch(sheet), comparisons: async () => 1, announce: () => {} };
  await settled();
  open = tell(context, root);
  open();
  await settled();
});

const boxes = () => [...root.querySelectorAll<HTMLInputElement>("input[type=checkbox]")];
const said = () => root.textContent.replaceAll("\u00a0", " ");

async function pressButton(text: string): Promise<void> {
  [...root.querySelectorAll("button")].find((button) => button.textContent === text)?.click();
  await settled();
}

async function press(box: HTMLInputElement | undefined): Promise<void> {
  box?.click();
  await settled();
}

it("offers each question once, whatever its cells show; the selected cell's is chosen", () => {
  const offered = boxes().map(({ checked, parentElement }) => [checked, parentElement?.textContent]);
  expect(offered).toEqual([
    [true, "Straw against Bare soil, in 7 beds: Up, enough to matter Mulch, D1"],
    [false, "Straw against Bare soil: Not settled, may be up Mulch, D4"],
  ]);
});

it("tells the chosen result in three lengths", () => {
  const headings = [...root.querySelectorAll("h2")].map(({ textContent }) => textContent);
  expect(headings).toEqual(["Report sheet", "Picture", "For a talk", "For a newsletter", "For a slide"]);
  expect(said()).toContain("Straw and Bare soil stood side by side in 7 beds.");
});

it("two results are told in one report, none tells nothing", async () => {
  await press(boxes()[1]);
  expect(said()).toContain("It is not settled: there may be a gain worth having.");
  for (const box of boxes()) if (box.checked) await press(box);
  expect([...root.querySelectorAll("h2")].filter((heading) => heading.closest("[hidden]") === null)).toHaveLength(0);
});

it("the trial's notes fill the sentences, and what they lack is named", async () => {
  expect(said()).toContain("Not complete yet. The trial's notes do not tell the crop, the place, the season");
  await sheet.keepNotes({ ...blankNotes, crop: "courgettes", place: "Marlpit Corner", season: "2023" });
  open();
  await settled();
  expect(said()).toContain("We grew courgettes at Marlpit Corner in 2023.");
  expect(said()).toContain("Not complete yet. The trial's notes do not tell the measure");
});

it("notes about another sheet are not told, and an answer that weakens the result is", async () => {
  const notes = { ...blankNotes, crop: "courgettes", answers: { "one-batch": "no" } } as const;
  await sheet.keepNotes({ ...notes, onlySheet: "Nets" });
  open();
  await settled();
  expect(said()).not.toContain("courgettes");
  await sheet.keepNotes({ ...notes, onlySheet: "Mulch" });
  open();
  await settled();
  expect(said()).toContain("We grew courgettes.");
  expect(said()).toContain("The treatments started with different seedlings");
});

it("amounts are told in the unit of the notes where the columns name none", async () => {
  await sheet.keepNotes({ ...blankNotes, unit: "grams" });
  open();
  await settled();
  expect(said()).toContain("Straw gave 4350 grams a plant");
});

it("a treatment that calls for a line on safety is told with it", async () => {
  expect(said()).not.toContain("Follow the product label");
  sheet.fill("B1", [["Soap spray"]]);
  open();
  await settled();
  expect(said()).toContain("Follow the product label: which crop, how much, how many days before harvest.");
});

it("a title of the grower's own heads the texts", async () => {
  vi.useFakeTimers();
  const fold = root.querySelector("details");
  fold?.setAttribute("open", "");
  fold?.dispatchEvent(new Event("toggle"));
  const title = root.querySelector<HTMLInputElement>(".field input");
  title?.setAttribute("value", "Mulch night");
  title?.dispatchEvent(new Event("input"));
  await vi.advanceTimersByTimeAsync(400);
  vi.useRealTimers();
  await settled();
  expect(said()).toContain("Mulch night");
});

it("a changed plant changes what is told, without a press", async () => {
  vi.useFakeTimers();
  sheet.fill("B2", [["lost"]]);
  await vi.advanceTimersByTimeAsync(400);
  vi.useRealTimers();
  await settled();
  expect(said()).toContain("stood side by side in 6 beds");
});

it("one press makes a sheet of the report, the next ones write that sheet anew or make another", async () => {
  await pressButton("Make a report sheet");
  expect([...sheet.own.keys()]).toEqual(["Report"]);
  expect(said()).toContain("Written on the sheet “Report”.");
  await press(boxes()[1]);
  await pressButton("Update the report sheet");
  expect([...sheet.own.keys()]).toEqual(["Report"]);
  expect(sheet.own.get("Report")?.tables).toHaveLength(2);
  await pressButton("Make another");
  expect([...sheet.own.keys()]).toEqual(["Report", "Report 2"]);
});

it("a second press while the sheet is written makes no second sheet", async () => {
  const make = [...root.querySelectorAll("button")].find(({ textContent }) => textContent === "Make a report sheet");
  make?.click();
  make?.click();
  await settled();
  expect([...sheet.own.keys()]).toEqual(["Report"]);
});

it("of several report sheets the grower sees which one is written anew, the newest first", async () => {
  await pressButton("Make a report sheet");
  await pressButton("Make another");
  const which = root.querySelector("select");
  expect([...(which?.options ?? [])].map(({ value }) => value)).toEqual(["Report 2", "Report"]);
  which?.options[1]?.setAttribute("selected", "");
  await press(boxes()[1]);
  await pressButton("Update the report sheet");
  expect([...sheet.own.values()].map(({ tables }) => tables.length)).toEqual([2, 1]);
});

it("a sheet that could not be written is told of, and the report is still there", async () => {
  sheet.refuse({ trouble: "protected", where: "The workbook" });
  await pressButton("Make a report sheet");
  expect(said()).toContain("The report was not written. The workbook is protected. Unprotect it first.");
  expect(said()).toContain("Straw and Bare soil stood side by side in 7 beds.");
});

it("a workbook without a comparison says what to do first", async () => {
  for (const address of ["D1", "D2", "D3", "D4"]) await sheet.enter(address, "=1");
  open();
  await settled();
  expect(said()).toMatch(/There is no result to tell yet\./);
});
