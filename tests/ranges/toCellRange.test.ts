import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { toCellRange } from "../../src/ranges/toCellRange";

const verified = { zerosVerified: true };

describe("toCellRange makes a block with rows of equal length", () => {
  it.each([
    [
      "a matrix",
      [
        [1, "a"],
        [null, 2],
      ],
      [
        [1, "a"],
        [null, 2],
      ],
    ],
    ["a single value", 5, [[5]]],
    ["an error in place of a matrix", { type: "Error", basicValue: "#N/A" }, [[{ error: "#N/A" }]]],
    ["one row without its matrix", [1, 2], [[1, 2]]],
    [
      "ragged rows",
      [[1], [2, 3], []],
      [
        [1, null],
        [2, 3],
        [null, null],
      ],
    ],
    ["no rows", [], [[null]]],
    ["one row without cells", [[]], [[null]]],
    [
      "rows mixed with single values",
      [[1, 2], 3],
      [
        [1, 2],
        [3, null],
      ],
    ],
    [
      "a longer row below shorter ones",
      [[1], [2, 3]],
      [
        [1, null],
        [2, 3],
      ],
    ],
    ["a text as long as the rows are wide in place of a row", [["a"], "b"], [["a"], ["b"]]],
    ["an error's name among plain cells", [[1], ["#N/A"]], [[1], [{ error: "#N/A" }]]],
    ["holes", [[1, undefined, ""]], [[1, null, null]]],
  ])("%s", (_name, raw, cells) => {
    expect(toCellRange("usual", raw, verified).cells).toEqual(cells);
  });
});

it("toCellRange takes a block of plain cells as it stands, as a long log takes too long to copy", () => {
  const raw = [
    [1, "a", null],
    [true, 0, "b"],
  ];
  expect(toCellRange("usual", raw, verified).cells).toBe(raw);
});

it("toCellRange keeps the argument's name, where it stands, and whether zeros are sure", () => {
  const range = toCellRange("new", [[1]], { address: "Sheet1!B2", zerosVerified: false });
  expect(range).toEqual({
    argument: "new",
    cells: [[1]],
    corner: { sheet: "Sheet1", row: 2, column: 2 },
    zerosVerified: false,
  });
});

it.each([[undefined], [null], [""], ["#REF!"]])("toCellRange knows no corner for the address %j", (address) => {
  expect(toCellRange("new", 1, { address, zerosVerified: true }).corner).toBeNull();
});

it("toCellRange never throws, and every row is as long as the first", () => {
  fc.assert(
    fc.property(fc.anything(), (raw) => {
      const { cells } = toCellRange("usual", raw, verified);
      expect(new Set(cells.map((row) => row.length)).size).toBe(1);
    }),
  );
});
