import { Direction } from "@univerjs/core";
import type { Cell } from "../../nouns/cell";
import type { Sheet } from "../sheet";
import { refusals } from "./functions/refusal";
import type { Grid } from "./grid";

/**
 * What browser tests and the curious may ask of the page, as `globalThis.fairbedPractice`. It reads and
 * does only what a grower could do; typing is left to the keyboard.
 */
export interface PracticeDoor {
  /** The value of one cell, not as formatted: `value("The trial", "H2")`. */
  value(sheet: string, address: string): Promise<Cell>;
  /** The text that the cell shows, as formatted. */
  shown(sheet: string, address: string): string;
  /** The sheet as the pane meets it. */
  readonly port: Sheet;
  /**
   * Puts a formula, text or number into a cell, over whatever it holds; resolves when its results stand in the cells.
   */
  put(sheet: string, address: string, content: string | number): Promise<void>;
  /** Gives a block of cells a name, as the name box does: `nameCells("straw", "'The trial'!$C$2:$C$9")`. */
  nameCells(name: string, reference: string): void;
  /** Inserts a row before a row's number, as the grid's menu does. */
  insertRow(sheet: string, before: number): Promise<void>;
  /** Inserts a column before a column's number, as the grid's menu does. */
  insertColumn(sheet: string, before: number): Promise<void>;
  /** Adds an empty sheet, as the button beside the sheets' names does. */
  addSheet(name: string): void;
  /** Gives a sheet another name, as a double click on its name does. */
  renameSheet(name: string, wanted: string): void;
  /** Deletes a sheet, as the menu of its name does. */
  deleteSheet(name: string): void;
  /** Names of the sheets, in their order. */
  sheets(): readonly string[];
  /** The sentence with which a function refused last time: `refusal("'The trial'!H2 UPDOWN")`. */
  refusal(call: string): string | undefined;
  /** Resolves when the results of everything done so far stand in the cells. */
  settled(): Promise<void>;
  /** How often the sheet has told of a change since the page opened. */
  notices(): number;
}

/** Opens the door on a running practice sheet. */
export function practiceDoor(grid: Grid, sheet: Sheet): PracticeDoor {
  const settled = () => grid.api.getFormula().onCalculationResultApplied();
  const insert = (command: string, how: object) => grid.api.executeCommand(command, how);
  const placeOf = (name: string) => ({
    unitId: grid.book.getId(),
    subUnitId: grid.book.getSheetByName(name)?.getSheetId(),
  });
  let notices = 0;
  sheet.onChange(() => {
    notices += 1;
  });
  return {
    value: async (name, address) => (await sheet.read(address, name)).cells[0]?.[0] ?? null,
    shown: (name, address) => grid.book.getSheetByName(name)?.getRange(address).getDisplayValue() ?? "",
    port: sheet,
    put: async (name, address, content) => {
      await sheet.write([{ sheet: name, address, content, format: "General" }], true);
      await settled();
    },
    settled,
    nameCells: (name, reference) => {
      grid.book.insertDefinedName(name, reference);
    },
    insertRow: async (name, before) => {
      const range = { startRow: before - 1, endRow: before - 1, startColumn: 0, endColumn: 0 };
      await insert("sheet.command.insert-row", { ...placeOf(name), direction: Direction.UP, range });
    },
    insertColumn: async (name, before) => {
      const range = { startRow: 0, endRow: 0, startColumn: before - 1, endColumn: before - 1 };
      await insert("sheet.command.insert-col", { ...placeOf(name), direction: Direction.LEFT, range });
    },
    addSheet: (name) => {
      grid.book.insertSheet(name);
    },
    renameSheet: (name, wanted) => void grid.book.getSheetByName(name)?.setName(wanted),
    deleteSheet: (name) => {
      const found = grid.book.getSheetByName(name);
      if (found !== null) grid.book.deleteSheet(found);
    },
    sheets: () => grid.book.getSheets().map((one) => one.getSheetName()),
    refusal: (call) => refusals.get(call),
    notices: () => notices,
  };
}
