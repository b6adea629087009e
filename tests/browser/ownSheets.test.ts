import type { Page } from "playwright-core";
import { beforeAll, expect, it } from "vitest";
import { numberCell, textCell } from "../../src/host/newSheet";
import type { OwnSheet } from "../../src/host/ownSheet";
import { chartDots } from "./chartDots";
import { openPracticePage, put, value } from "./practicePage";

const wanted: OwnSheet = {
  name: "Report",
  widths: [150, 90],
  blocks: [
    { address: "A1", rows: [[textCell("What straw gave", { bold: true })]] },
    {
      address: "A3",
      rows: [
        [textCell("Treatment"), textCell("Average (g)")],
        [textCell("=Bare"), numberCell(3063.1, "0")],
        [textCell("Straw"), numberCell(4350.6, "0")],
      ],
    },
  ],
  tables: ["A3:B5"],
  charts: [
    {
      title: "Average (g)",
      bars: [
        { name: "=Bare", figure: 3063.1, usual: true },
        { name: "Straw", figure: 4350.6, usual: false },
      ],
      format: "0",
      names: "A4:A5",
      figures: "B4:B5",
      place: "A7:F15",
    },
  ],
};
const later: OwnSheet = { ...wanted, blocks: [{ address: "A1", rows: [[textCell("Later")]] }], tables: [], charts: [] };
let page: Page;

beforeAll(async () => {
  page = await openPracticePage();
});

const putOwn = (sheet: OwnSheet, over: string | null) =>
  page.evaluate(([given, instead]) => fairbedPractice.port.putOwn(given, instead), [sheet, over] as const);
const own = () => page.evaluate(() => fairbedPractice.port.ownSheets());

it("a sheet of ours has its cells, its texts as texts, and its chart as a picture over the cells", async () => {
  expect(await putOwn(wanted, null)).toBe("Report");
  expect(await own()).toEqual(["Report"]);
  expect(await value(page, "Report", "A4")).toBe("=Bare");
  expect(await page.evaluate(() => fairbedPractice.shown("Report", "B5"))).toBe("4351");
  await expect.poll(async () => (await chartDots(page)).dots).toBeGreaterThan(5000);
});

it("the picture moves with its cells", async () => {
  const before = await chartDots(page);
  await page.evaluate(() => fairbedPractice.insertRow("Report", 2));
  await expect.poll(async () => (await chartDots(page)).first).toBeGreaterThan(before.first);
  expect((await chartDots(page)).dots).toBe(before.dots);
});

it("a later run takes the place of its own sheet, where it stood and as it is called now", async () => {
  await page.evaluate(() => fairbedPractice.renameSheet("Report", "Anna's report"));
  await page.evaluate(() => fairbedPractice.addSheet("Behind"));
  expect(await own()).toEqual(["Anna's report"]);
  expect(await putOwn(later, "Anna's report")).toBe("Anna's report");
  expect(await value(page, "Anna's report", "A1")).toBe("Later");
  expect((await page.evaluate(() => fairbedPractice.sheets())).slice(-2)).toEqual(["Anna's report", "Behind"]);
  await expect.poll(async () => (await chartDots(page)).dots).toBe(0);
});

it("never takes the place of another sheet, whatever it is asked for", async () => {
  await page.evaluate(() => fairbedPractice.addSheet("Report"));
  await put(page, ["Report", "A1"], "mine");
  expect(await putOwn(later, "Report")).toBe("Report 2");
  expect(await value(page, "Report", "A1")).toBe("mine");
  expect(await own()).toEqual(["Anna's report", "Report 2"]);
});

it("a sheet of ours that was deleted is none any more, nor is a new one of its name", async () => {
  await page.evaluate(() => fairbedPractice.deleteSheet("Report 2"));
  expect(await own()).toEqual(["Anna's report"]);
  await page.evaluate(() => fairbedPractice.addSheet("Report 2"));
  expect(await own()).toEqual(["Anna's report"]);
});

it("nothing is added while a cell is being typed into", async () => {
  await page.evaluate(() => fairbedPractice.port.select("Report", "C3"));
  await page.keyboard.type("1");
  const refused = await page.evaluate((sheet) => fairbedPractice.port.putOwn(sheet, null).catch((why) => why), wanted);
  expect(refused).toEqual({ trouble: "editing", where: "Report" });
  await page.keyboard.press("Escape");
  expect(await own()).toEqual(["Anna's report"]);
});
