import { describe, expect, it } from "vitest";
import type { Cell } from "../../src/nouns/cell";
import { compareTwo } from "../../src/questions/compareTwo";
import { codes, found, given } from "./range";

type Cells = readonly Cell[];

function cautions(usual: Cells, tried: Cells, options: Readonly<Record<string, Cell>> = {}) {
  return found(compareTwo(given({ usual, new: tried, ...options }))).cautions();
}

const usual = [10, 11, 12, 10.5, 11.5, 11.2];
const tried = [10.4, 11.3, 12.1, 10.2, 11.9, 11.1];
const up = usual.map((value) => value + 6);

it("a quiet trial raises place and season alone", () => {
  expect(codes(cautions(usual, tried))).toEqual(["C12"]);
  expect(codes(cautions(usual, up))).toEqual(["C12"]);
});

/** What raises each caution, and what is next to it but does not. */
const cases: readonly (readonly [
  code: string,
  fires: readonly [Cells, Cells],
  not: readonly [Cells, Cells],
  how?: string,
])[] = [
  ["C01", [usual.slice(0, 3), tried], [usual.slice(0, 4), tried]],
  ["C01", [usual.slice(0, 5), tried.slice(0, 5)], [usual, tried], "pairs"],
  ["C05", [[0, 0, 0, 8, 9, 8], tried], [[0, 0, 7, 8, 9, 8], tried]],
  ["C05", [[0, 0, 0, 0], tried], [[5, 6, 7, 6], tried]],
  [
    "C17",
    [
      [5, 5, 5, 5],
      [5, 5, 5, 5],
    ],
    [
      [5, 5, 5, 5],
      [5, 5, 5, 6],
    ],
  ],
  ["C03", [[...usual, "lost"], tried], [[...usual, "not weighed"], tried]],
  ["C04", [usual, ["dead", ...tried]], [usual, ["?", ...tried]]],
  ["C06", [[...usual, 60], tried], [[...usual, 50], tried]],
  ["C07", [[4, 18, 11, 3], tried], [[4, 18, 11, 3, 10, 12], tried]],
  ["C07", [[4, 18, 11, 3], tried], [[4, 18, 11], tried]],
  // more than twice the spread either way; the second has no more than its higher yield gives
  ["C07", [usual, [5, 38, 12, 30, 21]], [usual, [22.1, 20.2, 24.1, 23.2, 21]]],
  ["C14", [[...usual, "~11"], tried], [[...usual, 11], tried]],
  ["C16", [usual, usual.map((value) => value * 2.51)], [usual, usual.map((value) => value * 2.49)]],
  // averages of 10 and 25: 150 % to the digit
  [
    "C16",
    [
      [8, 10, 12, 10],
      [20, 25, 30, 25.1],
    ],
    [
      [8, 10, 12, 10],
      [20, 25, 30, 25],
    ],
  ],
  ["C35", [[3, 4, 6, 7, 5], tried], [[3, 4, 6, 7, 6], tried]],
];

it.each(cases.map(([code, fires, not, how = "separate"]) => ({ code, fires, not, how })))(
  "$code fires where it should, and not beside: case %#",
  ({ code, fires, not, how }) => {
    expect(codes(cautions(...fires, { how }))).toContain(code);
    expect(codes(cautions(...not, { how }))).not.toContain(code);
  },
);

it("C01 counts separate plants of each treatment, or pairs", () => {
  const [few, more] = [usual.slice(0, 3), tried.slice(0, 5)];
  expect(cautions(few, more)).toContainEqual(expect.objectContaining({ caution: "C01", plants: [3, 5], pairs: false }));
  expect(cautions(usual.slice(0, 5), more, { how: "pairs" })).toContainEqual(
    expect.objectContaining({ caution: "C01", plants: [5, 5], pairs: true }),
  );
});

describe("C07", () => {
  const narrow = [9, 12, 10, 12, 10, 10, 11, 12, 10, 12, 10, 9, 9, 12];
  const wide = [8, 12, 11, 13, 12, 8, 14, 6, 8, 10, 6, 13, 8, 10, 8, 10, 7, 13, 14, 13];
  const unlike = (...found: readonly [Cells, Cells]) => cautions(...found).filter(({ caution }) => caution === "C07");

  // by R's sd() and var.test() of shares of the averages: 2.198 times the spread, p .004
  it("names the treatment that varies more, be it the usual or the new", () => {
    expect(unlike(["Bare", ...narrow], ["Straw", ...wide])).toEqual([{ caution: "C07", name: "Straw", role: "new" }]);
    expect(unlike(["Bare", ...wide], ["Straw", ...narrow])).toEqual([{ caution: "C07", name: "Bare", role: "usual" }]);
  });

  // 1.934 times the spread, p .015
  it("says nothing below twice the spread, however sure that is", () => {
    const less = [10, 9, 12, 12, 10, 12, 12, 9, 9, 10, 10, 10, 12, 11];
    const more = [9, 14, 13, 11, 7, 7, 11, 8, 12, 15, 8, 11, 10, 12, 8, 9, 11, 11, 7, 12];
    expect(unlike(less, more)).toEqual([]);
  });

  it("is raised beside plants that are all alike, and not where all of both are", () => {
    expect(unlike([5, 5, 5, 5], wide)).toMatchObject([{ role: "new" }]);
    expect(unlike([5, 5, 5, 5], [6, 6, 6, 6, 6])).toEqual([]);
  });

  it("is for separate plants: pairs are as many of each", () => {
    const pairs = cautions(narrow, wide.slice(0, 14), { how: "pairs" });
    expect(codes(pairs)).not.toContain("C07");
  });
});

it("C15 fires for zeros that may be empty cells", () => {
  const call = given({ usual: [...usual, 0], new: tried });
  const doubtful = { ...call, usual: { ...call.usual, zerosVerified: false } } as typeof call;
  expect(codes(found(compareTwo(doubtful)).cautions())).toContain("C15");
  expect(codes(found(compareTwo(call)).cautions())).not.toContain("C15");
});

describe("C03 says what counting lost plants as zero makes of the change", () => {
  const rows: readonly [Cells, Cells] = [
    [10, 11, "?", 12, 10, 11.5, 11],
    [14, "lost", 15, 16, 14, 15, 13],
  ];
  it.each(["separate", "pairs"])("as the function itself would: %s", (how) => {
    const loss = cautions(...rows, { how }).find(({ caution }) => caution === "C03");
    const asZero = found(compareTwo(given({ usual: rows[0], new: rows[1], how, lost_plants: "count as zero" })));
    expect(loss).toMatchObject({ caution: "C03", changeLostAsZero: asZero.change, countedAsZero: false });
  });
});

describe("luck", () => {
  const fragile = [14.9, 15.6, 14.2, 14.4, 15.2, 15.9];
  const level = [13.2, 14, 12, 15, 13.5, 14.5];

  it("C21 names the plant without which little is left, not one of those that a difference just shown cannot lose", () => {
    const rests = found(compareTwo(given({ usual: [19, 18, 14, 18, 23, 16], new: [27, 19, 31, 29] })));
    expect(rests.cautions()).toContainEqual({ caution: "C21", place: rests.onePlantDecides() });
    const close = compareTwo(given({ usual: level, new: fragile }));
    expect(found(close).onePlantDecides()).not.toBeNull();
    expect(codes(found(close).cautions())).not.toContain("C21");
    expect(codes(cautions(usual, up))).not.toContain("C21");
  });

  it("C22 where the verdict is close and the label swap says otherwise, but not among few plants", () => {
    // p-values of R's t.test(), and of all swaps listed with combn()
    const spread = [8, 9, 10, 11, 12, 13, 14, 15];
    // Marlpit Corner: t says p .053, the label swap .025
    const bare = [2252, 3203, 2264, 2705, 3242, 2787, 4152, 3542];
    const straw = [3249, 4245, 3972, 2494, 4278, 6923, 5293];
    expect(codes(cautions(bare, straw))).toContain("C22");
    expect(codes(cautions(bare, straw, { confidence: 0.9 }))).not.toContain("C22");
    // t says p .042, the label swap .231
    expect(codes(cautions([8, 9, 9, 10], [6, ...spread, 18, 9, 11]))).toContain("C22");
    // t says p .027, the label swap .166
    expect(codes(cautions([8, 9, 9, 10], [7, ...spread, 16, 9, 11]))).not.toContain("C22");
    // t says p .084, too far from its bar, the label swap .018
    expect(codes(cautions([9, 8, 8, 8, 11, 10, 9, 8], [17, 8, 15, 16]))).not.toContain("C22");
    // three against three: t says p .045, the label swap cannot say less than .1
    expect(codes(cautions([11, 12, 13], [20, 15, 19]))).not.toContain("C22");
    // three against five: t says p .068, the label swap .018
    expect(codes(cautions([7, 16, 13], [19, 23, 21, 20, 22]))).not.toContain("C22");
    // five pairs: t says p .046, the label swap 4 of 32
    const pairs = cautions([10, 12, 14, 15, 13], [15, 13, 18, 20, 13], { how: "pairs" });
    expect(codes(pairs)).not.toContain("C22");
  });

  it("C30 where a difference was just found, with a wide range or by a trial likely to miss half of it", () => {
    expect(codes(cautions([20, 19, 9, 28, 9, 18], [18, 38, 20, 27, 30, 43]))).toContain("C30");
    // the wide range alone: by R's pt(), such a trial finds a change halfway to 95 % 72 times in 100
    expect(codes(cautions([20, 19, 9, 28, 9, 18], [18, 38, 20, 27, 30, 43], { worthwhile: 0.95 }))).toContain("C30");
    const just = fragile.map((value) => value - 0.1);
    expect(codes(cautions(level, just, { worthwhile: 0.01 }))).toContain("C30");
    expect(codes(cautions(level, just, { worthwhile: 0.12 }))).not.toContain("C30");
    // a wide range that stays well above nothing
    expect(codes(cautions([2, 9, 3, 8, 2.5, 4], [20, 29, 33, 18, 25, 30]))).not.toContain("C30");
    expect(codes(cautions(level, fragile, { worthwhile: 0.01 }))).not.toContain("C30");
    expect(codes(cautions([2, 9, 3, 8], [3, 19, 4, 12]))).not.toContain("C30");
  });
});
