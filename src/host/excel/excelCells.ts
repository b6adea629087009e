import type { Cell } from "../../nouns/cell";

/** The properties of a range that `excelCells` needs loaded. */
export const cellProperties = "values,valueTypes";

/** A loaded range's cells: an empty one is null and an error a record, which `values` alone does not tell. */
export function excelCells({ values, valueTypes }: Excel.Range): readonly (readonly Cell[])[] {
  return values.map((row: readonly unknown[], down) =>
    row.map((value, across) => excelCell(value, valueTypes[down]?.[across] ?? "Unknown")),
  );
}

function excelCell(value: unknown, type: `${Excel.RangeValueType}`): Cell {
  if (type === "Empty") return null;
  if (type === "Error") return { error: String(value) };
  return typeof value === "number" || typeof value === "boolean" ? value : String(value);
}
