/** The requirement sets with which a worksheet function may bring a number format along with its result. */
const needed = [
  ["CustomFunctionsRuntime", "1.4"],
  ["ExcelApi", "1.19"],
] as const;

/**
 * Whether this Excel shows a result in the number format that it brings along. False while Office is not yet there,
 * and in a context that runs the functions alone.
 *
 * Source: https://learn.microsoft.com/office/dev/add-ins/excel/custom-functions-data-types-concepts
 */
export function excelFormats(): boolean {
  if (typeof Office !== "object") return false;
  const context: Partial<Office.Context> = Office.context ?? {};
  const { requirements } = context;
  return requirements !== undefined && needed.every(([set, version]) => requirements.isSetSupported(set, version));
}
