import { describe, expect, it } from "vitest";
import { totalAtEnd } from "../../src/ranges/totalAtEnd";

const rows = (...values: number[]) => totalAtEnd(values.map((value, index) => ({ value, index, numberCell: true })));

/** The demo's bare-soil plants, in g; their average 3018.375 is METHODS' own example. */
const BARE = [2252, 3203, 2264, 2705, 3242, 2787, 4152, 3542];

describe("totalAtEnd finds a total", () => {
  it("when the last number is the sum of those above", () => {
    expect(rows(...BARE, 24147)).toEqual({ row: "total", index: 8 });
  });

  it("in spite of rounding noise", () => {
    expect(rows(0.1, 0.2, 0.3, 0.4, 1.0000000000000002)).toEqual({ row: "total", index: 4 });
  });

  it("when the average of the same plants stands right below it", () => {
    expect(rows(...BARE, 24147, 3018.375)).toEqual({ row: "total", index: 8 });
  });

  it("that passed over numbers typed as text, as SUM does", () => {
    const cells = [1, 2, 3, 4, 5, 10].map((value, index) => ({ value, index, numberCell: index !== 4 }));
    expect(totalAtEnd(cells)).toEqual({ row: "total", index: 5 });
  });
});

/** Numbers of a column in which those given as text are no number cells. */
const typed = (...cells: (number | string)[]) =>
  totalAtEnd(cells.map((cell, index) => ({ value: Number(cell), index, numberCell: typeof cell === "number" })));

describe("totalAtEnd with numbers typed as text, which the sheet's own functions pass over", () => {
  it.each([
    ["a total of the number cells that is the average of all as well", [1, 2, 3, 4, "40", 10], "total", 5],
    ["an average with more decimals than the number cells", [1, 2, 3, 5, "2.75", 2.75], "average", 5],
    ["an average of the number cells alone", [3, 4, 5, 4, "100", 4], "equals-average", 5],
    ["a total with its average below", [1, 2, 3, 4, "5", 10, 2.5], "total", 5],
  ] as const)("%s", (_name, cells, row, index) => {
    expect(typed(...cells)).toEqual({ row, index });
  });
});

describe("totalAtEnd at the edges", () => {
  it("a total may be just twice the largest number (METHODS 4.1)", () => {
    expect(rows(1, 2, 3, 6, 12)).toEqual({ row: "total", index: 4 });
  });

  it("amounts in the thousands leave more rounding noise", () => {
    const plants = [1002.1, 1003.2, 1004.3, 1005.4];
    expect(plants.reduce((total, plant) => total + plant, 0)).not.toBe(4015);
    expect(rows(...plants, 4015)).toEqual({ row: "total", index: 4 });
  });

  it("counts the decimals of numbers that are written with an exponent", () => {
    expect(rows(1e-7, 2e-7, 3e-7, 4e-7, 2.5e-7)).toEqual({ row: "average", index: 4 });
  });
});

describe("totalAtEnd finds an average", () => {
  it("when it has more decimals than any number above", () => {
    expect(rows(...BARE, 3018.375)).toEqual({ row: "average", index: 8 });
    expect(rows(1.5, 2.25, 3.5, 4.5, (1.5 + 2.25 + 3.5 + 4.5) / 4)).toEqual({ row: "average", index: 4 });
  });

  it("and calls it equal to the average when the decimals do not tell", () => {
    expect(rows(3, 4, 5, 4, 4)).toEqual({ row: "equals-average", index: 4 });
    expect(rows(0.25, 0.5, 0.5, 0.75, 0.5)).toEqual({ row: "equals-average", index: 4 });
  });
});

describe("totalAtEnd sees none", () => {
  it.each([
    ["with three numbers above", [1, 2, 3, 6]],
    ["with three numbers above an average", [1, 2, 2, 5 / 3]],
    ["in plants that all bore nothing but one", [0, 0, 0, 5, 5]],
    ["in a sum less than twice the largest", [1, 0, 1, 9, 11]],
    ["in one number", [5]],
    ["in nothing", []],
    ["in the demo's bare-soil plants", BARE],
    ["further up", [...BARE, 24147, 3000]],
  ])("%s", (_name, values) => {
    expect(rows(...values)).toBeNull();
  });

  it("in plants that all bore nothing, where only an average could stand", () => {
    expect(rows(0, 0, 0, 0, 0)).toEqual({ row: "equals-average", index: 4 });
  });
});
