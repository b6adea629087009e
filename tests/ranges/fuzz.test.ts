import { expect, it } from "vitest";
import type { Cell } from "../../src/nouns/cell";
import { isDay } from "../../src/nouns/day";
import { lookAtBlock } from "../../src/ranges/lookAtBlock";
import { plainCell } from "../../src/ranges/plainCell";
import { readBlock } from "../../src/ranges/readBlock";
import { readDate } from "../../src/ranges/readDate";
import { seeded } from "../seeded";

/** Pieces that growers, spreadsheets and other alphabets put into a cell. */
const pieces = [
  ..."0123456789.,-+/*~()[]'\"½¾=%:;# \t\u00A0\u2009\u200B\uFEFFéßЖ日🥒\u0301\uD800",
  ..."kg g lb oz lost dead none approx about and 5 July th of Monday 2023 T08:00Z 1e9 e+308 =SUM(A1:A9) #N/A NaN".split(
    " ",
  ),
  ..."Infinity -0 0x1F ½lb 1,250 1.250.000 12.5.2023 2023-07-05 99999999999999999999 \u202E١٢٣ １２３ ²³".split(" "),
];
const numbers = [0, -0, 1e-320, 1e300, -1e300, 2 ** 53, 0.1 + 0.2, 45_112, 60, 61, 2_958_465, 5e-324, -1, 20_230_705];

const draw = seeded(6);
const pick = <Item>(items: readonly Item[]): Item => items[draw(items.length)] as Item;

function anyText(): string {
  const length = draw(5000) === 0 ? 2000 : 1 + draw(5);
  if (draw(20) === 0) return pick(pieces).repeat(length);
  let text = "";
  for (let at = 0; at < length; at++) text += draw(10) === 0 ? String.fromCharCode(draw(65_536)) : pick(pieces);
  return text;
}

function anyCell(): Cell {
  switch (draw(12)) {
    case 0:
      return draw(2) === 0 ? pick(numbers) : (draw(2e9) - 1e9) / 10 ** draw(9);
    case 1:
      return pick([null, true, false, { error: "#N/A" }, Number.NaN, Number.POSITIVE_INFINITY]);
    default:
      return anyText();
  }
}

/** What is wrong with what was read from a cell; null when all is well. */
function wrongWith(cell: Cell): string | null {
  const { cell: plain } = plainCell(cell, "g");
  if (plain.is === "number" && !Number.isFinite(plain.value)) return "a plain number that is not finite";
  const date = readDate(cell);
  const days = date.means === "day" ? [date.day] : date.means === "either" ? [date.dayFirst, date.monthFirst] : [];
  return days.every(isDay) ? null : "a day that no calendar has";
}

it("a million cells: no exception, nothing that is not finite", () => {
  const wrong: unknown[] = [];
  for (let at = 0; at < 1_000_000; at++) {
    const cell = anyCell();
    const found = wrongWith(cell);
    if (found !== null) wrong.push([found, cell]);
  }
  expect(wrong).toEqual([]);
}, 120_000);

it("whole blocks: what was read is finite or not there, and every remark has its row (100 000 cells)", () => {
  for (let block = 0; block < 250; block++) {
    const cells = Array.from({ length: 100 }, () => [anyCell(), anyCell(), anyCell(), anyCell()]);
    const range = { argument: "cells", cells, corner: null, zerosVerified: true };
    const { block: read, columns, aside } = lookAtBlock(readBlock(range, null));
    const rows = [...columns.flatMap(({ noted }) => noted), ...aside].map(({ row }) => row);
    expect(rows.filter((row) => row < 0 || row >= read.rows)).toEqual([]);
    const numbers = columns.flatMap((column) => (column.kind === "amount" ? [...column.values] : []));
    expect(numbers.filter((number) => Math.abs(number) === Number.POSITIVE_INFINITY)).toEqual([]);
  }
}, 120_000);

it("long texts take time by their length only: twice as long, never ten times as slow", () => {
  const time = (text: string): number => {
    const start = performance.now();
    for (let at = 0; at < 5; at++) wrongWith(text);
    return performance.now() - start;
  };
  for (const piece of [
    "1",
    "1,",
    "1.",
    " ",
    "-",
    "1 lb ",
    "½",
    "a",
    "lost ",
    "5/",
    "1+",
    "1'",
    "dead 1/1/",
    "(",
    "july ",
  ]) {
    const [short, long] = [piece.repeat(20_000), piece.repeat(160_000)];
    time(short);
    expect(time(long), piece).toBeLessThan(80 * time(short) + 50);
  }
});
