import type { ICellData } from "@univerjs/core";
import { expect, it } from "vitest";
import { practiceWorkbook } from "../../../../src/host/practice/workbook/practiceWorkbook";

const { sheets, sheetOrder } = practiceWorkbook();

/** All texts of a sheet, in one. */
function textOf(id: string): string {
  const rows: Record<string, ICellData>[] = Object.values(sheets[id]?.cellData ?? {});
  return rows.flatMap((row) => Object.values(row).map(({ v }) => String(v ?? ""))).join("\n");
}

it("has its sheets in the order of the work", () => {
  expect(sheetOrder.map((id) => sheets[id]?.name)).toEqual([
    "The trial",
    "Plant by plant",
    "Pick log, messy",
    "Pick log, clean",
    "Two plants each",
    "Totals only",
    "Many crops",
    "Does it pay",
    "Before planting",
    "Luck in class",
    "Try your own",
  ]);
});

const invented = [
  "the-trial",
  "plant-by-plant",
  "messy-picks",
  "clean-picks",
  "two-plants-each",
  "totals-only",
  "many-crops",
  "does-it-pay",
  "before-planting",
  "luck-in-class",
];

it.each(invented)("says on %s that its data are invented", (id) => {
  expect(textOf(id)).toContain("Invented data for practice.");
});

it("leaves room for a grower's own numbers", () => {
  const rows = Object.entries(sheets["try-your-own"]?.cellData ?? {});
  const filled = rows.filter(
    ([row, cells]) => Number(row) > 0 && (cells?.[0] !== undefined || cells?.[1] !== undefined),
  );
  expect(filled).toEqual([]);
});
