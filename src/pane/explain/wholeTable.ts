import type { Reading, Selection } from "../../host/sheet";
import { addressOf, firstSpot } from "../address";
import type { Context } from "../context";
import { button } from "../dom/blocks";
import { element } from "../dom/element";
import type { Taken } from "../rangePicker";
import { asTrouble, troubleText } from "../trouble";
import type { TableColumn, TableColumns } from "./tableColumns";

/** The offer to find the ranges of a question in a table that is selected whole, or that a cell stands in. */
export interface WholeTable {
  readonly root: HTMLElement;
  /** To be called when the selection has changed. */
  readonly refresh: () => void;
  /** Forgets what was found. */
  readonly clear: () => void;
}

/** @param found is given the amounts, the treatments and the beds, if any */
export function wholeTable(context: Context, found: (ranges: readonly (Taken | null)[]) => void): WholeTable {
  const find = button("", () => void look());
  const told = element("p", { class: "hint", role: "status" });
  const root = element("div", { class: "whole-table" }, find, told);
  refresh();
  return { root, refresh, clear };

  function refresh(): void {
    const { selection } = context.watched.get();
    const where = selection !== null && isTable(selection) ? "in" : "around";
    find.textContent = selection === null ? "Select the table" : `Find the columns ${where} ${selection.address}`;
    find.disabled = selection === null;
  }

  function clear(): void {
    told.textContent = "";
  }

  async function look(): Promise<void> {
    const { selection } = context.watched.get();
    if (selection === null) return;
    try {
      const table = await tableOf(selection, context);
      if (table !== null) found(rangesOf(table.columns, table.reading));
      told.textContent = table === null ? nothing : foundText(table.columns, table.reading);
    } catch (reason) {
      told.textContent = troubleText(asTrouble(reason));
    }
  }
}

/** A table as it was read, and what its columns seem to be. */
interface Table {
  readonly reading: Reading;
  readonly columns: TableColumns;
}

/** The table that is selected, or that the selected cells stand in; null where there is none of plants. */
async function tableOf(selection: Selection, { sheet }: Context): Promise<Table | null> {
  const [{ tableAround }, { tableColumns }] = await Promise.all([
    import("../check/tableAround"),
    import("./tableColumns"),
  ]);
  const address = isTable(selection) ? selection.address : await tableAround(selection, sheet);
  if (address === null) return null;
  const reading = await sheet.read(address, selection.sheet);
  const columns = tableColumns(reading.cells);
  return columns === null ? null : { reading, columns };
}

const nothing = "There is no column of amounts with names beside them. Take each range by itself.";

/** Whether two columns or more are selected. */
function isTable({ address }: Selection): boolean {
  const [first = "", last = first] = address.split(":");
  const isRows = /^\d/.test(first);
  return isRows || firstSpot(last).column > firstSpot(first).column;
}

function rangesOf(columns: TableColumns, reading: Reading): readonly (Taken | null)[] {
  return [columns.amounts, columns.treatments, columns.beds].map((column) =>
    column === null ? null : { sheet: reading.corner.sheet, address: addressIn(column, columns, reading) },
  );
}

function addressIn({ at }: TableColumn, { rows }: TableColumns, { corner }: Reading): string {
  const [from, to] = rows.map((row) => addressOf({ row: corner.row + row, column: corner.column + at }));
  return `${from}:${to}`;
}

function foundText(columns: TableColumns, reading: Reading): string {
  const { amounts, treatments, beds, otherAmounts, isPicks } = columns;
  const named = (what: string, column: TableColumn) =>
    `${what}: ${column.heading === "" ? addressIn(column, columns, reading) : column.heading}.`;
  return [
    named("Amounts", amounts),
    named("Treatments", treatments),
    beds === null ? "No beds." : named("Beds", beds),
    "Where that is wrong, take other cells.",
    ...otherAmounts.map(
      ({ heading }) => `${heading || "Another column"} holds numbers too. Ask of what you chose before harvest.`,
    ),
    isPicks ? "These look like picks, several for a plant. Add them up with TALLYPICKS first." : "",
  ]
    .filter((text) => text !== "")
    .join(" ");
}
