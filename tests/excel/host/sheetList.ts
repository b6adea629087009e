import { addressOf, areaOf } from "./area";
import { refusal } from "./hostObject";
import type { Workbook } from "./workbook";

/** Excel refuses a name that a sheet has already, in any letter case. */
export function addedSheet(book: Workbook, name: string): string {
  if (book.structureProtected) throw refusal("AccessDenied");
  mayBeCalled(book, name);
  book.sheets.set(name, new Map());
  return name;
}

/** Deletes a sheet with all that is on it; a name that pointed at it points at nothing. */
export function deleteSheet(book: Workbook, name: string): void {
  if (book.structureProtected || book.refused.has("delete")) throw refusal("AccessDenied");
  if (!book.sheets.delete(name)) throw refusal("ItemNotFound");
  const isOn = (address: string) => areaOf(address, "")?.sheet === name;
  for (const [defined, address] of book.names) if (isOn(address)) book.names.set(defined, "#REF!");
  keep(book.tables, (address) => !isOn(address));
  keep(book.charts, ({ sheet }) => sheet !== name);
}

/** Gives a sheet another name, also wherever names, tables and charts point at it. */
export function renameSheet(book: Workbook, name: string, wanted: string): void {
  if (book.structureProtected || book.refused.has("rename")) throw refusal("AccessDenied");
  mayBeCalled(book, wanted);
  const moved = (address: string) => {
    const area = areaOf(address, "");
    return area?.sheet === name ? addressOf({ ...area, sheet: wanted }) : address;
  };
  const sheets = [...book.sheets].map(([one, cells]) => [one === name ? wanted : one, cells] as const);
  replace(book.sheets, sheets);
  for (const [defined, address] of book.names) book.names.set(defined, moved(address));
  book.tables.splice(0, Infinity, ...book.tables.map(moved));
  const charts = book.charts.map((chart) => ({
    ...chart,
    sheet: chart.sheet === name ? wanted : chart.sheet,
    source: moved(chart.source),
  }));
  book.charts.splice(0, Infinity, ...charts);
}

/** Puts a sheet at another place among the sheets. */
export function moveSheet(book: Workbook, name: string, place: number): void {
  if (book.structureProtected) throw refusal("AccessDenied");
  const moving = [...book.sheets].filter(([one]) => one === name);
  const others = [...book.sheets].filter(([one]) => one !== name);
  replace(book.sheets, [...others.slice(0, place), ...moving, ...others.slice(place)]);
}

function mayBeCalled(book: Workbook, name: string): void {
  const taken = [...book.sheets.keys()].some((other) => other.toLowerCase() === name.toLowerCase());
  if (taken || name.length > 31) throw refusal("InvalidArgument");
}

function keep<Item>(list: Item[], isKept: (item: Item) => boolean): void {
  list.splice(0, Infinity, ...list.filter(isKept));
}

function replace<Key, Value>(map: Map<Key, Value>, entries: readonly (readonly [Key, Value])[]): void {
  map.clear();
  for (const [key, value] of entries) map.set(key, value);
}
