import { afterEach, expect, it } from "vitest";
import { holdsZero, noticeBlanks, withBlanks } from "../../src/functions/zeros";
import { type Blankness, blanksToldApart } from "../../src/host/blanks";

afterEach(() => {
  delete (globalThis as { [key: symbol]: unknown })[Symbol.for("fairbed.blanks")];
});

const raw = (value: unknown, address: string | null = "S!A1:A3") => ({ value, address });

/** The sheet's own word for each cell of a column. */
const column =
  (...words: readonly ("empty" | "filled")[]): Blankness =>
  (row) =>
    words[row] ?? "outside";

it.each([
  [0, true],
  [[[4], [0]], true],
  [[[{ type: "FormattedNumber", basicValue: 0 }]], true],
  [[[4], [""], [null], [false], ["0"]], false],
  [null, false],
])("%j holds a zero: %s", (value, holds) => {
  expect(holdsZero(raw(value))).toBe(holds);
});

it.each([
  ["null in a range", raw([[null]]), true],
  ["null in a block without an address", raw([[4], [null]], null), true],
  ["an omitted argument, however it comes", raw([[null]], null), false],
  ["a single value that is null", raw(null), false],
  ["an empty text", raw([[""], [4]]), false],
])("%s proves that the host tells blanks apart: %s", (_, given, proves) => {
  noticeBlanks(given);
  expect(blanksToldApart()).toBe(proves);
});

it("puts null back where a zero came and the sheet says empty, or ends before", () => {
  const given = raw([[0], [0], [5], [0]]);
  expect(withBlanks(given, column("empty", "filled", "empty")).value).toEqual([[null], [0], [5], [null]]);
  expect(withBlanks(raw(0), column("empty")).value).toBe(null);
  expect(withBlanks(raw(0), column("filled")).value).toBe(0);
});

it("an empty text is proof only for a cell that the sheet itself calls empty", () => {
  withBlanks(raw([[""], [0]]), column("filled", "empty"));
  withBlanks(raw([[0], [""]]), column("empty"));
  expect(blanksToldApart()).toBe(false);
  withBlanks(raw([[""], [0]]), column("empty", "filled"));
  expect(blanksToldApart()).toBe(true);
});
