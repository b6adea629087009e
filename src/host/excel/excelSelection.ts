import type { Selection, SheetTrouble } from "../sheet";
import { cellProperties, excelCells } from "./excelCells";
import { withoutSheet } from "./excelReference";
import { inExcel } from "./inExcel";

/** What is selected in Excel, and what stands in its first cell. */
export async function excelSelection(): Promise<Selection> {
  try {
    return await inExcel("", selectedCells);
  } catch (reason) {
    throw isNotCells(reason) ? await several(reason) : reason;
  }
}

async function selectedCells(context: Excel.RequestContext): Promise<Selection> {
  const range = context.workbook.getSelectedRange();
  const first = range.getCell(0, 0);
  range.load("address,worksheet/name");
  first.load(`${cellProperties},formulas,formulasLocal,numberFormat`);
  await context.sync();
  const formula = String(first.formulas[0]?.[0] ?? "");
  const calculates = formula.startsWith("=");
  return {
    sheet: range.worksheet.name,
    address: withoutSheet(range.address),
    formula: calculates ? formula : "",
    formulaShown: calculates ? String(first.formulasLocal[0]?.[0] ?? "") : "",
    value: excelCells(first)[0]?.[0] ?? null,
    numberFormat: String(first.numberFormat[0]?.[0] ?? ""),
  };
}

function isNotCells(reason: unknown): reason is SheetTrouble {
  return typeof reason === "object" && reason !== null && "trouble" in reason && reason.trouble === "not-cells";
}

/** Excel refuses a chart and several areas with one code; only the areas can be counted. */
async function several(otherwise: SheetTrouble): Promise<SheetTrouble> {
  try {
    return await inExcel("", async (context) => {
      const areas = context.workbook.getSelectedRanges();
      areas.load("areaCount");
      await context.sync();
      return areas.areaCount > 1 ? { trouble: "several-areas", where: "" } : otherwise;
    });
  } catch {
    return otherwise;
  }
}
