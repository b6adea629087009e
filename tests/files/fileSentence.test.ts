import { expect, it } from "vitest";
import type { FileProblem } from "../../src/files/fileProblem";
import { fileSentence } from "../../src/files/fileSentence";

const problems: readonly FileProblem[] = [
  { problem: "empty-file" },
  { problem: "encrypted" },
  { problem: "old-excel" },
  { problem: "other-kind" },
  { problem: "damaged" },
  { problem: "not-text" },
  { problem: "too-large", megabytes: 130, limit: 100 },
  { problem: "bomb", megabytes: 2131, limit: 500 },
  { problem: "too-many-cells", cells: 1_000_000, limit: 600_000 },
];

it("says why a file was refused, and what to do", () => {
  expect(problems.map(fileSentence)).toMatchInlineSnapshot(`
    [
      "This file is empty. Choose another one.",
      "This workbook is locked with a password. Save a copy without a password in Excel, and open that.",
      "This is a workbook of the old kind, .xls. Save it as .xlsx in Excel, and open that.",
      "This is no .xlsx or .csv file. Save it as .xlsx in your spreadsheet program, and open that.",
      "This file is damaged, so that it cannot be read whole. Fetch it again from where you have it.",
      "This file is no table of text. Save it as .csv or .xlsx in your spreadsheet program, and open that.",
      "This file has 130 MB. Up to 100 MB can be opened here. Save the sheets you need on their own.",
      "This file would unpack to 2131 MB. Up to 500 MB can be opened here. Save the sheets you need on their own.",
      "This file has 1 000 000 cells. Up to 600 000 can be opened here. Save the rows you need on their own.",
    ]
  `);
});
