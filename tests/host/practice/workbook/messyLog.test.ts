import { expect, it } from "vitest";
import { cleanLog, logHeadings } from "../../../../src/host/practice/workbook/cleanLog";
import { messyLog } from "../../../../src/host/practice/workbook/messyLog";
import { csvRows } from "../../../functions/demoLog";

/** A log as the demo's own files of tests/reference write it. */
function written(
  rows: readonly (readonly (string | number | null)[])[],
  columns: number,
): readonly (readonly string[])[] {
  return rows.map((row) => Array.from({ length: columns }, (_, column) => String(row[column] ?? "")));
}

it("the clean log is the demo's, pick by pick", () => {
  const [headings, ...rows] = csvRows("demoLogClean");
  expect(headings).toEqual(logHeadings.slice(0, 6));
  expect(written(cleanLog, 6)).toEqual(rows);
});

it("the messy log is the demo's, slip by slip", () => {
  const [headings, ...rows] = csvRows("demoLogMessy");
  expect(headings).toEqual(logHeadings);
  expect(written(messyLog, 7)).toEqual(rows);
});

it("the slips stand where the demo lists them, twenty of them", () => {
  const listed = csvRows("demoLogMessySlips")
    .slice(1)
    .map(([row]) => Number(row));
  expect(listed).toHaveLength(20);
  const clean = new Set(written(cleanLog, 7).map(String));
  const seen = new Set<string>();
  const odd = written(messyLog, 7).flatMap((row, at) => {
    const isOdd = !clean.has(String(row)) || seen.has(String(row));
    seen.add(String(row));
    return isOdd ? [at + 2] : [];
  });
  expect(odd).toEqual(listed);
});
