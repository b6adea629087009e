import { type Cell, isEmpty } from "../../nouns/cell";
import { bedLayout, type Stand } from "../beside/bedLayout";
import { labelOf } from "../beside/repeatsBeside";
import { BEDS, DATES, PLACES, PLANTS } from "../headings";

/** A column of a table, counted from 0, and its heading. */
export interface TableColumn {
  readonly at: number;
  /** "" where it has none. */
  readonly heading: string;
}

/** What the columns of a table with a row for each plant seem to be. */
export interface TableColumns {
  /** The rows that belong to the table, counted from 0; the first holds the headings where there are any. */
  readonly rows: readonly [first: number, last: number];
  readonly amounts: TableColumn;
  readonly treatments: TableColumn;
  readonly beds: TableColumn | null;
  /** Other columns that may hold the amounts. */
  readonly otherAmounts: readonly TableColumn[];
  /** Whether a plant, or a date, comes more than once, so that rows are picks and not plants. */
  readonly isPicks: boolean;
}

const AMOUNTS =
  /\b(?:g|kg|grams?|kilos?|lbs?|oz|ounces?|pounds?|weight|yield|harvest|totals?|amounts?|fruits?|pods?)\b/i;
const TREATMENTS =
  /\b(?:treatment|mulch|variety|method|way|mix|compost|cover|net|netting|spacing|pruning|watering|spray|feed|seed)s?\b/i;
/** Titles and notes may stand above the headings. */
const MOST_ABOVE = 5;
const MOST_TREATMENTS = 20;
const MOSTLY = 0.8;

/**
 * Finds out by headings and by what stands below them which column of a table holds the amounts, which the treatments
 * and which the beds. Null where there is no column of numbers with one of repeated names beside it.
 */
export function tableColumns(cells: readonly (readonly Cell[])[]): TableColumns | null {
  const headed = headingRow(cells);
  const first = headed ?? Math.max(0, cells.findIndex(isFilledRow));
  const last = cells.findLastIndex(isFilledRow);
  const body = cells.slice(headed === null ? first : headed + 1, last + 1);
  const columns = (cells[first] ?? []).map((_, at): Column => {
    const own = body.map((row) => row[at] ?? null);
    return {
      at,
      heading: headed === null ? "" : headingText(cells[headed]?.[at]),
      cells: own,
      labels: own.map(labelOf),
    };
  });
  const treatments = likeliest(columns.filter(isNames), ({ heading }) => (TREATMENTS.test(heading) ? 1 : 0));
  const numbers = columns.filter((column) => column !== treatments && isNumbers(column));
  const amounts = likeliest(numbers, ({ heading }) => (AMOUNTS.test(heading) ? 1 : 0));
  if (treatments === null || amounts === null) return null;
  const free = columns.filter((column) => column !== treatments && column !== amounts);
  return {
    rows: [first, last],
    amounts,
    treatments,
    beds: bedsAmong(free, treatments),
    otherAmounts: numbers.filter((column) => column !== amounts),
    isPicks: free.some(isRepeated),
  };
}

interface Column extends TableColumn {
  readonly cells: readonly Cell[];
  readonly labels: readonly string[];
}

function isFilledRow(row: readonly Cell[]): boolean {
  return row.some(isFilled);
}

function isFilled(cell: Cell): cell is Exclude<Cell, null> {
  return !isEmpty(cell);
}

/** The first row of two texts or more and nothing else, with a number below it. */
function headingRow(cells: readonly (readonly Cell[])[]): number | null {
  const found = cells.slice(0, MOST_ABOVE).findIndex((row, at) => {
    const filled = row.filter(isFilled);
    return filled.length > 1 && filled.every(isName) && (cells[at + 1] ?? []).some((cell) => typeof cell === "number");
  });
  return found < 0 ? null : found;
}

function headingText(cell: Cell | undefined): string {
  return typeof cell === "string" ? cell.trim() : "";
}

/** A text that does not begin with a figure, as "177 g" and "~3" do. */
function isName(cell: Cell): boolean {
  return typeof cell === "string" && !/^\W*\d/.test(cell);
}

/** Names beside nearly every plant, some of them more than once; figures only below a heading of treatments. */
function isNames({ cells, labels, heading }: Column): boolean {
  const filled = cells.filter(isFilled);
  const kinds = new Set(labels.filter((label) => label !== "")).size;
  const names = TREATMENTS.test(heading) ? filled : filled.filter(isName);
  const isOther = [BEDS, PLANTS, DATES].some((words) => words.test(heading));
  if (isOther || names.length < MOSTLY * filled.length || filled.length < MOSTLY * cells.length) return false;
  return kinds > 1 && kinds <= MOST_TREATMENTS && kinds < filled.length;
}

/** Mostly numbers, that count neither plants nor days, and are none of a bed. */
function isNumbers({ cells, heading }: Column): boolean {
  const numbers = cells.filter((cell) => typeof cell === "number");
  const [filled, figures] = [cells.filter(isFilled), cells.filter((cell) => isFilled(cell) && !isName(cell))];
  const isOther = BEDS.test(heading) || DATES.test(heading) || PLACES.test(heading) || isPlantLabel(heading);
  if (isOther || figures.length < filled.length / 2 || numbers.length < 2) return false;
  return !isCounting(numbers) && !numbers.every(isDate);
}

function isPlantLabel(heading: string): boolean {
  return PLANTS.test(heading) && !AMOUNTS.test(heading);
}

/** 1, 2, 3 …, once or over and over. */
function isCounting(numbers: readonly number[]): boolean {
  return numbers.every((number, at) => at === 0 || number === 1 || number === (numbers[at - 1] ?? 0) + 1);
}

/** As a sheet counts days, from 1998 to 2050. */
function isDate(number: number): boolean {
  return number > 36_000 && number < 55_000 && Number.isInteger(number);
}

/** The likeliest, the last of those that are alike: totals stand to the right. */
function likeliest(columns: readonly Column[], likeness: (column: Column) => number): Column | null {
  return columns.reduce<Column | null>(
    (found, column) => (found === null || likeness(column) >= likeness(found) ? column : found),
    null,
  );
}

/** By its heading; or one that is headed as a place, or not at all, and holds each treatment once at most. */
function bedsAmong(columns: readonly Column[], treatments: Column): TableColumn | null {
  const standsOf = ({ labels }: Column) => labels.map((bed, row): Stand => [treatments.labels[row] ?? "", bed]);
  const named = columns.find(({ heading }) => BEDS.test(heading));
  if (named !== undefined) return named;
  const found = columns.find((column) => {
    const stands = standsOf(column);
    const once = new Set(stands.map((stand) => JSON.stringify(stand))).size === stands.length;
    return (column.heading === "" || PLACES.test(column.heading)) && once && bedLayout(stands) === "shared";
  });
  return found ?? null;
}

/** Plants or dates of which one comes again. */
function isRepeated({ heading, labels }: Column): boolean {
  const filled = labels.filter((label) => label !== "");
  const kinds = new Set(filled).size;
  if (PLANTS.test(heading)) return kinds < filled.length;
  return DATES.test(heading) && kinds > 1 && kinds < filled.length && filled.length > labels.length / 2;
}
