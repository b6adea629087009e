import type { Cell } from "../../nouns/cell";
import { DATES, PLANTS } from "../headings";
import type { BesideColumn, Stood } from "./columnsBeside";

/**
 * Whether a column beside a range of plants shows that it holds picks instead (METHODS 9.2, C02): a plant's label
 * comes more than once, or dates do, as they would where several plants were picked on each of several days.
 */
export function repeatsBeside({ beside }: Stood): boolean {
  return beside.some((column) => {
    const labels = labelsIn(column.cells);
    const kinds = new Set(labels).size;
    if (column.above.some((text) => PLANTS.test(text))) return kinds < labels.length;
    return column.above.some((text) => DATES.test(text)) && kinds > 1 && kinds < labels.length;
  });
}

/** The labels of a column, letter case and spaces aside; empty cells left out. */
function labelsIn(cells: BesideColumn["cells"]): readonly string[] {
  return cells.map(labelOf).filter((label) => label !== "");
}

/** A cell as a label: letter case and spaces around it do not matter. */
export function labelOf(cell: Cell): string {
  return cell === null || typeof cell === "object" ? "" : String(cell).trim().toLowerCase();
}
