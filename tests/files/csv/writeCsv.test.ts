import { expect, it } from "vitest";
import type { BookCell, BookSheet } from "../../../src/files/book";
import { readCsv } from "../../../src/files/csv/readCsv";
import { writeCsv } from "../../../src/files/csv/writeCsv";
import { answered } from "../answered";
import { edited, sheetCells } from "../sheetCells";

const blank: BookSheet = { name: "S", hidden: false, rows: new Map(), merges: [], widths: new Map() };
const looks = [{}, { pattern: "yyyy-mm-dd" }, { pattern: "0.0%" }];

function written(cells: Record<string, BookCell>): string {
  return new TextDecoder("utf-8", { ignoreBOM: true }).decode(writeCsv(edited(blank, cells), looks));
}

it("writes values as RFC 4180 asks, with results in place of formulas", () => {
  const cells: Record<string, BookCell> = {
    A1: { value: 'say "so"' },
    C1: { value: 0.25, look: 2 },
    A3: { value: 46145, look: 1 },
    B3: {
      value: "change",
      formula: "=FAIRBED.COMPARETWO(A1)",
      spill: [
        ["change", 0.3],
        [true, { error: "#N/A" }],
      ],
    },
  };
  expect(written(cells)).toBe('\uFEFF"say ""so""",,0.25\r\n\r\n2026-05-03,change,0.3\r\n,TRUE,#N/A\r\n');
});

it("guards texts that a spreadsheet would take for formulas", () => {
  expect(written({ A1: { value: "=1+1" }, B1: { value: "@x" }, C1: { value: -5 }, D1: { value: "'=1" } })).toBe(
    "\uFEFF'=1+1,'@x,-5,''=1\r\n",
  );
});

it("leaves a sign alone as it is: it is no formula", () => {
  expect(written({ A1: { value: "-" }, B1: { value: "'-" }, C1: { value: "-x" } })).toBe("\uFEFF-,'-,'-x\r\n");
});

it("writes times, and numbers that are no day though their cells show dates", () => {
  const cells = { A1: { value: 0.60486111, look: 1 }, B1: { value: -3, look: 1 }, C1: { value: 2_958_466, look: 1 } };
  expect(written(cells)).toBe("\uFEFF14:31:00,-3,2958466\r\n");
  // 31 December 9999 is Excel's last day, half past one in the afternoon of 3 May 2026 is 46145.5625.
  expect(written({ A1: { value: 2_958_465, look: 1 }, B1: { value: 46145.5625, look: 1 } })).toBe(
    "\uFEFF9999-12-31,2026-05-03 13:30:00\r\n",
  );
});

it("writes as many rows as the grid takes, a formula's too", () => {
  const height = 600_000;
  const spill = Array.from({ length: height }, (_, row) => [row]);
  const text = written({ A1: { value: 0, formula: "=A1:A9", spill } });
  expect(text.split("\r\n")).toHaveLength(height + 1);
  expect(text).toMatch(/\n599999\r\n$/);
});

it("reads back what it wrote", () => {
  const cells: Record<string, BookCell> = {
    A1: { value: "=1+1" },
    B1: { value: "007" },
    C1: { value: "2026-05-03" },
    A2: { value: 1e-7 },
    B2: { value: "two\nlines" },
    C2: { value: 46145, look: 1 },
    A3: { value: "-" },
    B3: { value: "'-" },
    C3: { value: "'=1" },
    A4: { value: "''=1" },
  };
  expect(sheetCells(answered(readCsv(writeCsv(edited(blank, cells), looks), "S")).sheets[0])).toEqual(cells);
});
