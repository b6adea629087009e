import type { Reading } from "../../host/sheet";
import { addressOf, firstSpot } from "../address";
import type { Context } from "../context";
import { button } from "../dom/blocks";
import { element } from "../dom/element";
import type { Taken } from "../rangePicker";
import { asTrouble, troubleText } from "../trouble";
import type { TableColumn, TableColumns } from "./tableColumns";

/** The offer to find the ranges of a question in a table that is selected whole. */
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
    const table = selectedTable(context);
    find.textContent = table === null ? "Select the whole table" : `Find the columns in ${table.address}`;
    find.disabled = table === null;
  }

  function clear(): void {
    told.textContent = "";
  }

  async function look(): Promise<void> {
    const table = selectedTable(context);
    if (table === null) return;
    try {
      const { tableColumns } = await import("./tableColumns");
      const reading = await context.sheet.read(table.address, table.sheet);
      const columns = tableColumns(reading.cells);
      if (columns !== null) found(rangesOf(columns, reading));
      told.textContent = columns === null ? nothing : foundText(columns, reading);
    } catch (reason) {
      told.textContent = troubleText(asTrouble(reason));
    }
  }
}

const nothing = "There is no column of amounts with names beside them. Take each range by itself.";

/** What is selected, when it is two columns or more. */
function selectedTable({ watched }: Context): Taken | null {
  const { selection } = watched.get();
  if (selection === null) return null;
  const [first = "", last = first] = selection.address.split(":");
  const isRows = /^\d/.test(first);
  return isRows || firstSpot(last).column > firstSpot(first).column ? selection : null;
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
