import { expect, it } from "vitest";
import { doFileJob, type FileReport } from "../../src/files/fileJob";
import { excelFile, sheetPart } from "./excelFile";
import { sheetCells } from "./sheetCells";

const functions = { own: ["COMPARETWO"], known: ["SUM", "FAIRBED.COMPARETWO"] };
const bytes = excelFile({
  sheets: [
    ["One", sheetPart('<row r="1"><c r="A1"><v>5</v></c></row>')],
    ["Two", sheetPart('<row r="1"><c r="A1"><f>MAGIC(1)</f><v>7</v></c></row>')],
  ],
});

function done(job: Parameters<typeof doFileJob>[0]) {
  const told: FileReport[] = [];
  const report = doFileJob(job, (one) => told.push(one));
  return { report, told };
}

it("opens a workbook, tells of each sheet, and lists what it leaves alone", () => {
  const { report, told } = done({ job: "open", name: "Harvest.xlsx", bytes, functions });
  expect(report).toMatchObject({ report: "opened", leftAlone: ["Two!A1"], tied: ["formulas of other makers"] });
  expect(told).toEqual([
    { report: "progress", done: 1, of: 2 },
    { report: "progress", done: 2, of: 2 },
  ]);
});

it("opens a table of text under its file's name, and saves it as a workbook and as text", () => {
  const text = new TextEncoder().encode("bed,kg\n1,2.5");
  const { report } = done({ job: "open", name: "My [best] harvest: beds and weights.csv", bytes: text, functions });
  if (report.report !== "opened") throw new Error(report.report);
  const [sheet] = report.book.sheets;
  expect(sheet?.name).toBe("My  best  harvest  beds and wei");
  const saved = done({ job: "save", original: null, book: report.book, functions }).report;
  if (saved.report !== "saved") throw new Error(saved.report);
  const again = done({ job: "open", name: "x.xlsx", bytes: saved.bytes, functions }).report;
  expect(again.report === "opened" && sheetCells(again.book.sheets[0])).toEqual(sheetCells(sheet));
  const csv = done({ job: "csv", book: report.book, sheet: sheet?.name ?? "" }).report;
  expect(csv.report === "saved" && new TextDecoder().decode(csv.bytes)).toBe("bed,kg\r\n1,2.5\r\n");
});

it("refuses with a sentence", () => {
  expect(done({ job: "open", name: "x.xlsx", bytes: new Uint8Array(), functions }).report).toEqual({
    report: "refused",
    sentence: "This file is empty. Choose another one.",
  });
  const damaged = bytes.slice(0, 100);
  expect(
    done({ job: "save", original: damaged, book: { sheets: [], looks: [], names: [] }, functions }).report,
  ).toEqual({
    report: "refused",
    sentence: "This file is damaged, so that it cannot be read whole. Fetch it again from where you have it.",
  });
});
