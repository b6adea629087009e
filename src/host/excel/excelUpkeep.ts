import { holdsOurCall } from "../holdsOurCall";
import { asTyped, type Kept, type Stranger, type Upkeep } from "../upkeep";
import { patienceForMany } from "./answeredSoon";
import { cellProperties, excelCells } from "./excelCells";
import { withoutSheet } from "./excelReference";
import { inExcel } from "./inExcel";
import { usedFormulas } from "./usedFormulas";

/**
 * How Excel writes our functions' names while it does not know them; some workbooks have the file that it looked for
 * them in before it. Source: what people report at https://github.com/OfficeDev/office-js/issues.
 */
const unknownName = /(?:(?:'(?:[^']|'')*'|\[[^\]]*\][\w.]*|\b[A-Za-z_][\w.]*)!|\b)_xldudf_FAIRBED_/gi;

/** Upkeep of the workbook that is open in Excel. */
export function excelUpkeep(): Upkeep {
  return { strangers, enterAnew, keepAsText, bringBack };
}

async function strangers(): Promise<readonly Stranger[]> {
  const formulas = await inExcel("", usedFormulas, patienceForMany);
  return formulas.flatMap(({ sheet, address, formula, value }) => {
    const typed = formula.replace(unknownName, "FAIRBED.");
    const strange = typed !== formula || (value === "#NAME?" && holdsOurCall(formula));
    return strange ? [{ sheet, address, formula: typed }] : [];
  });
}

function enterAnew(found: readonly Stranger[]): Promise<void> {
  return inExcel(
    found[0]?.address ?? "",
    async (context) => {
      for (const { sheet, address, formula } of found) {
        context.workbook.worksheets.getItem(sheet).getRange(address).formulas = [[formula]];
      }
      await context.sync();
    },
    patienceForMany,
  );
}

function keepAsText(sheet: string, address: string): Promise<Kept | null> {
  return inExcel(address, async (context) => {
    const cell = context.workbook.worksheets.getItem(sheet).getRange(address);
    const table = cell.getSpillingToRangeOrNullObject();
    cell.load(`${cellProperties},formulas`);
    table.load(`${cellProperties},address`);
    await context.sync();
    const formula = String(cell.formulas[0]?.[0] ?? "");
    if (!formula.startsWith("=")) return null;
    const whole = table.isNullObject ? cell : table;
    whole.values = excelCells(whole).map((row) => row.map(asTyped));
    await context.sync();
    return { sheet, address: table.isNullObject ? address : withoutSheet(table.address), formula };
  });
}

/** The cells of a table are emptied first: what stands in the way of a table keeps it from showing. */
function bringBack({ sheet, address, formula }: Kept): Promise<void> {
  return inExcel(address, async (context) => {
    const whole = context.workbook.worksheets.getItem(sheet).getRange(address);
    whole.clear("Contents");
    whole.getCell(0, 0).formulas = [[formula]];
    await context.sync();
  });
}
