import { describe, expect, it } from "vitest";
import { lostRows, withoutLost } from "../../src/ranges/lostRows";
import type { PickAmounts } from "../../src/ranges/pickAmounts";

const amounts: PickAmounts = {
  values: Float64Array.of(5, Number.NaN, Number.NaN, Number.NaN),
  unit: null,
  lost: new Set([1]),
  missing: new Map([
    [2, "empty"],
    [3, "text"],
  ]),
  readInto: new Set(),
  zerosUnverified: 0,
};
const owners = Int32Array.of(0, 1, 2, 3);

describe("lostRows", () => {
  it("knows the amounts' own lost-words where no column beside is given", () => {
    expect([...lostRows(amounts, null, owners)]).toEqual([[1, "amounts"]]);
  });

  it("reads the lost-words of the column beside, and nothing else of it", () => {
    const beside = [[0], ["dead"], ["Lost"], ["slugs"]];
    expect([...lostRows(amounts, beside, owners)]).toEqual([
      [1, "amounts"],
      [2, "lossNotes"],
    ]);
  });

  it("a row beyond the owners' loses nothing", () => {
    expect([...lostRows(amounts, [[0], [0], [0], [0], ["dead"]], owners)]).toEqual([[1, "amounts"]]);
  });

  it("a row of nobody loses nothing", () => {
    expect([...lostRows({ ...amounts, lost: new Set() }, [["dead"], ["dead"]], Int32Array.of(-1, 0))]).toEqual([
      [1, "lossNotes"],
    ]);
  });
});

it("withoutLost misses no amount where the word says why there is none; a note stays unread", () => {
  const lost = new Map([
    [2, "lossNotes"],
    [3, "lossNotes"],
  ] as const);
  expect([...withoutLost(amounts, lost).missing]).toEqual([[3, "text"]]);
});
