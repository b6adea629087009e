import type { Desk } from "../../src/answers/desk";
import { findCalls } from "../../src/formula/findCalls";
import { freeSheetName } from "../../src/host/freeSheetName";
import type { NewCell, NumberFormat, PlacedCells } from "../../src/host/newSheet";
import type { OwnSheet } from "../../src/host/ownSheet";
import type { Entry, Reading, Selection, Sheet, SheetTrouble } from "../../src/host/sheet";
import type { Cell } from "../../src/nouns/cell";
import { blankNotes, type TrialNotes } from "../../src/nouns/trialNotes";
import { addressOf, firstSpot, type Spot } from "../../src/pane/address";
import { ask } from "../../src/pane/ask";

/** What stands in one cell. */
interface Content {
  readonly formula: string;
  readonly value: Cell;
  readonly format: string;
}

/** A spreadsheet in memory for the pane's tests: it keeps cells, and works out our calls with the desk it is given. */
export interface MemorySheet extends Sheet {
  /** Puts values into cells, from a first cell to the right and down. */
  fill(address: string, rows: readonly (readonly Cell[])[]): void;
  /** Puts a formula into a cell and works it out. */
  enter(address: string, formula: string, format?: NumberFormat): Promise<void>;
  /** Shows another value in a cell than its formula gives. */
  show(address: string, value: Cell): void;
  /** Selects as a grower does, and tells the pane. */
  click(address: string, sheet?: string): void;
  /** Makes the next selections fail, or none. */
  refuse(trouble: SheetTrouble | null): void;
  at(address: string, sheet?: string): Content | undefined;
  /** Names of the sheets that were added, in their order. */
  readonly added: readonly string[];
  /** Sheets of ours as they were put last, by their names. */
  readonly own: ReadonlyMap<string, OwnSheet>;
}

const home = "Mulch";
const empty: Content = { formula: "", value: null, format: "General" };

export function memorySheet(desk: Desk, names: Readonly<Record<string, string>> = {}): MemorySheet {
  const cells = new Map<string, Content>();
  const added: string[] = [];
  const own = new Map<string, OwnSheet>();
  const listeners = new Set<() => void>();
  let selected = { sheet: home, address: "A1" };
  let refusal: SheetTrouble | null = null;
  let notes: TrialNotes = blankNotes;

  const key = (address: string, sheet: string) => `${sheet}!${address}`;
  const put = (address: string, sheet: string, change: Partial<Content>) => {
    const before = cells.get(key(address, sheet)) ?? empty;
    cells.set(key(address, sheet), { ...before, ...change });
  };
  const notify = () => {
    for (const listener of listeners) listener();
  };

  const lastUsed = (sheet: string): Spot => {
    const filled = [...cells].filter(([at, { value }]) => at.startsWith(`${sheet}!`) && value !== null);
    const spots = filled.map(([at]) => firstSpot(at.slice(sheet.length + 1)));
    return {
      row: Math.max(1, ...spots.map(({ row }) => row)),
      column: Math.max(1, ...spots.map(({ column }) => column)),
    };
  };

  const read = async (reference: string, from: string): Promise<Reading> => {
    const [, prefix, rest = reference] = /^(.*)!([^!]*)$/.exec(names[reference] ?? reference) ?? [];
    const range = names[rest] ?? rest;
    const sheet = (prefix ?? from).replace(/^'(.*)'$/, "$1").replaceAll("''", "'");
    const used = lastUsed(sheet);
    if (/^[A-Z]+:[A-Z]+$/.test(range)) return read(range.replace(/(.*):(.*)/, `$11:$2${used.row}`), sheet);
    if (/^\d+:\d+$/.test(range)) return read(range.replace(/(.*):(.*)/, `A$1:${lettersOf(used.column)}$2`), sheet);
    if (!/^\$?[A-Z]+\$?\d+(:\$?[A-Z]+\$?\d+)?$/.test(range)) throw trouble("no-such-range", reference);
    const [first = range, last = first] = range.split(":");
    const [from_, to] = [firstSpot(first), firstSpot(last)];
    const rows = Array.from({ length: to.row - from_.row + 1 }, (_, down) =>
      Array.from({ length: to.column - from_.column + 1 }, (_, across): Cell => {
        const spot = { row: from_.row + down, column: from_.column + across };
        return cells.get(key(addressOf(spot), sheet))?.value ?? null;
      }),
    );
    return { cells: rows, corner: { sheet, ...from_ } };
  };

  const workOut = async (formula: string, sheet: string): Promise<Cell> => {
    const [call] = findCalls(formula);
    if (call === undefined) return formula;
    const asked = await ask(call, { sheet: memory, desk, home: sheet });
    if (asked.outcome === "refusal") return { error: asked.refusal.code };
    return asked.outcome === "answer" ? (asked.answer.cell()[0]?.[0] ?? null) : null;
  };

  const memory: MemorySheet = {
    added,
    own,
    async selection(): Promise<Selection> {
      if (refusal !== null) throw refusal;
      const [first = ""] = selected.address.split(":");
      const { formula, value, format } = cells.get(key(first, selected.sheet)) ?? empty;
      return { ...selected, formula, formulaShown: formula, value, numberFormat: format };
    },
    read,
    onChange(notice) {
      listeners.add(notice);
      return () => listeners.delete(notice);
    },
    async write(entries: readonly Entry[], over: boolean) {
      const filled = entries.find(({ sheet, address }) => (cells.get(key(address, sheet)) ?? empty).value !== null);
      if (filled !== undefined && !over) throw trouble("not-empty", filled.address);
      for (const { sheet, address, content, format } of entries) {
        const formula = typeof content === "string" && content.startsWith("=") ? content : "";
        put(address, sheet, { formula, value: formula === "" ? content : await workOut(formula, sheet), format });
      }
      notify();
    },
    async add({ name, blocks }) {
      added.push(name);
      for (const { spot, cell } of blocks.flatMap(spotsOf)) {
        const formula = cell.kind === "formula" ? String(cell.content) : "";
        put(spot, name, { formula, value: formula === "" ? cell.content : null, format: cell.format });
      }
      selected = { sheet: name, address: "A1" };
      notify();
      return name;
    },
    ownSheets: async () => [...own.keys()],
    async putOwn(sheet, over) {
      if (refusal !== null) throw refusal;
      const name = over !== null && own.has(over) ? over : freeSheetName(sheet.name, [home, ...added]);
      if (name !== over) await memory.add({ ...sheet, name });
      own.set(name, sheet);
      return name;
    },
    async format(sheet, address, format) {
      put(address, sheet, { format });
      notify();
    },
    async select(sheet, address) {
      selected = { sheet, address };
      notify();
    },
    async calls() {
      return [...cells].flatMap(([at, { formula }]) => {
        const [, sheet = "", address = ""] = /^(.*)!([^!]*)$/.exec(at) ?? [];
        return /FAIRBED\./.test(formula) ? [{ sheet, address, formula }] : [];
      });
    },
    notes: async () => notes,
    async keepNotes(written) {
      notes = written;
    },
    theme: () => ({ dark: false }),
    fill(address, rows) {
      const corner = firstSpot(address);
      for (const [down, row] of rows.entries()) {
        for (const [across, value] of row.entries()) {
          put(addressOf({ row: corner.row + down, column: corner.column + across }), home, { value });
        }
      }
      notify();
    },
    async enter(address, formula, format = "General") {
      put(address, home, { formula, value: await workOut(formula, home), format });
      notify();
    },
    show: (address, value) => put(address, home, { value }),
    click(address, sheet = home) {
      selected = { sheet, address };
      notify();
    },
    refuse(next) {
      refusal = next;
      notify();
    },
    at: (address, sheet = home) => cells.get(key(address, sheet)),
  };
  return memory;
}

function lettersOf(column: number): string {
  return addressOf({ row: 1, column }).replace(/\d+$/, "");
}

function trouble(kind: SheetTrouble["trouble"], where: string): SheetTrouble {
  return { trouble: kind, where };
}

/** The cells of a block with their addresses. */
function spotsOf({ address, rows }: PlacedCells): readonly { readonly spot: string; readonly cell: NewCell }[] {
  const { row, column } = firstSpot(address);
  return rows.flatMap((cells, down) =>
    cells.flatMap((cell, across) =>
      cell === null ? [] : [{ spot: addressOf({ row: row + down, column: column + across }), cell }],
    ),
  );
}
