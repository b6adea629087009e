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
