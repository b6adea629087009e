import { describe, expect, it } from "vitest";
import type { Reading, Remark } from "../../src/nouns/reading";
import { readingText, sheetRow } from "../../src/words/readingText";
import { cell, row } from "./records";

const reading = (text: string, remark: Remark): Reading => ({ ...remark, text, place: cell("D4") });
const day = { year: 2023, month: 7, day: 5 };

describe("what was made of a cell", () => {
  it.each<[string, Remark, string]>([
    ["0.235kg", { kind: "unit-converted", amount: { value: 235, unit: "g" } }, "0.235kg = 235 g"],
    ["12 500 g", { kind: "unit-converted", amount: { value: 12_500, unit: "g" } }, "12 500 g = 12500 g"],
    ["1+1", { kind: "mark-removed", amount: { value: 2, unit: null } }, "1+1 = 2"],
    ["2 (1 split)", { kind: "unreadable", why: "text" }, "2 (1 split)"],
    ["1,250", { kind: "unreadable", why: "doubtful-number", numbers: [1250, 1.25] }, "1,250: 1250 or 1.25"],
    [
      "5/7",
      {
        kind: "unreadable",
        why: "order",
        days: [
          { ...day, year: null },
          { year: null, month: 5, day: 7 },
        ],
      },
      "5/7: 5 July or 7 May",
    ],
    ["45112", { kind: "excel-date", day }, "45112: 5 July 2023"],
    ["5 July", { kind: "date-settled", serial: 45_112 }, "5 July = 5 July 2023"],
    [
      "bare",
      { kind: "names-alike", like: "Bare soil", uses: 1, likeUses: 80, same: false },
      "bare (1), Bare soil (80)",
    ],
    ["45131", { kind: "possible-double", like: cell("A218") }, "as row 218"],
    ["", { kind: "not-recorded", why: "empty" }, "empty"],
    ["", { kind: "not-recorded", why: "empty-row" }, "empty row"],
    ["forgot", { kind: "not-recorded", why: "word" }, "forgot"],
    ["dead", { kind: "lost" }, "dead"],
  ])("%s", (text, remark, told) => {
    expect(readingText(reading(text, remark))).toBe(told);
  });
});

it("the sheet's row where it is known, else the row of the range", () => {
  expect(sheetRow(cell("AB218"))).toBe(218);
  expect(sheetRow(row("cells", 3))).toBe(3);
});
