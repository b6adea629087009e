import { isAddress } from "../isAddress";
import { excelReference } from "./excelReference";

/**
 * The cells that a reference of a formula means: an address, a name, a table or its column, "A1#".
 *
 * A sheet's getRange knows addresses, and names and tables as far as they lie on that sheet; a formula may name those
 * of any sheet.
 *
 * @param home the sheet that the formula stands on
 */
export async function excelRange(context: Excel.RequestContext, reference: string, home: string): Promise<Excel.Range> {
  const { sheet, range, spills } = excelReference(reference, home);
  const here = context.workbook.worksheets.getItem(sheet);
  const found = isAddress(range) || !mayBeName.test(range) ? here.getRange(range) : await namedRange(here, range);
  return spills ? found.getSpillingToRange() : found;
}

const mayBeName = /^[\p{L}_\\]/u;

async function namedRange(here: Excel.Worksheet, reference: string): Promise<Excel.Range> {
  const { workbook } = here.context;
  const [, name = reference] = /^([^[]+)\[/.exec(reference) ?? [];
  const names = [here.names, workbook.names].map((items) => items.getItemOrNullObject(name));
  const table = workbook.tables.getItemOrNullObject(name);
  for (const item of [...names, table]) item.load("name");
  await here.context.sync();
  if (!table.isNullObject) return name === reference ? table.getDataBodyRange() : table.worksheet.getRange(reference);
  return names.find(({ isNullObject }) => !isNullObject)?.getRange() ?? here.getRange(reference);
}
