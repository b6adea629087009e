import { describe, expect, it } from "vitest";
import type { Cell } from "../../src/nouns/cell";
import { compareMany } from "../../src/questions/compareMany";
import { near } from "../near";
import { codes, found, given } from "./range";

type Row = readonly [treatment: string, amount: Cell, bed?: number];

const asked = (rows: readonly Row[], more: Parameters<typeof given>[0]) => {
  const inBeds = rows.some(([, , bed]) => bed !== undefined);
  const column = (at: 0 | 1 | 2) => rows.map((row) => row[at] ?? null);
  const beds = inBeds ? { beds: column(2) } : {};
  return compareMany(given({ treatments: column(0), amounts: column(1), ...beds, ...more }));
};
const many = (rows: readonly Row[], more: Parameters<typeof given>[0] = {}) => found(asked(rows, more));

const rowsOf = (plants: Readonly<Record<string, readonly Cell[]>>) =>
  Object.entries(plants).flatMap(([name, amounts]) => amounts.map((amount): Row => [name, amount]));

/** "Bare 10 1, Straw lost 1": treatment, amount and bed of each plant. */
const plots = (text: string) =>
  text.split(", ").map((plot): Row => {
    const [name = "", amount = "", bed] = plot.split(" ");
    return [name, Number.isNaN(Number(amount)) ? amount : Number(amount), Number(bed)];
  });

const none = { absent: "no-usable-plants" };

describe("each treatment has its plants, where they stand", () => {
  const rows = plots(
    "Bare 10 1, Straw 14 1, Bare lost 2, Straw 15 2, Straw forgot 3, Bare 12 3, Straw 17 4, Bare 11 4",
  );
  const { treatments, usual } = many(rows, { usual: "bare" });

  it("with the bed, by its name; the lost and the not recorded by themselves", () => {
    expect(usual).toBe("Bare");
    expect(treatments.map(({ name }) => name)).toEqual(["Straw", "Bare"]);
    const [straw, bare] = treatments;
    expect(straw?.plants.map(({ value, bed, place }) => [value, bed, place.cell])).toEqual([
      [14, "1", "B3"],
      [15, "2", "B5"],
      [17, "4", "B8"],
    ]);
    expect([straw?.lost, straw?.notRecorded.map(({ cell }) => cell)]).toEqual([[], ["B6"]]);
    expect([bare?.lost.map(({ cell }) => cell), bare?.notRecorded]).toEqual([["B4"], []]);
  });

  it("against the usual, which is not set against itself; letters are for all pairs", () => {
    expect(treatments.map(({ againstUsual }) => againstUsual === null)).toEqual([false, true]);
    expect(treatments.map(({ letters }) => letters)).toEqual(["", ""]);
    const pairs = many(rows);
    expect(pairs.usual).toBeNull();
    expect(pairs.treatments.map(({ againstUsual }) => againstUsual)).toEqual([null, null]);
    expect(pairs.treatments.every(({ letters }) => /^[a-z]+$/.test(letters))).toBe(true);
  });

  it("without beds, of none", () => {
    const separate = many(rowsOf({ Bare: [10, 11], Straw: [14, 15] }));
    expect(separate).toMatchObject({ beds: null, idleBeds: [] });
    expect(separate.treatments.map(({ plants: [first], meanBedsRemoved }) => [first?.bed, meanBedsRemoved])).toEqual([
      [null, null],
      [null, null],
    ]);
  });
});

describe("a treatment without plants comes last and has no average, however early it is named", () => {
  it.each<[string, readonly Row[]]>([
    ["in beds", plots("Bark lost 1, Bare 10 1, Straw 14 1, Bare 12 2, Straw 15 2, Bare 11 3, Straw 17 3")],
    ["separate", rowsOf({ Bark: ["lost"], Bare: [10, 12, 11], Straw: [14, 15, 17] })],
  ])("%s", (_what, rows) => {
    const { treatments } = many(rows);
    expect(treatments.map(({ name }) => name)).toEqual(["Straw", "Bare", "Bark"]);
    const inBeds = rows[0]?.[2] !== undefined;
    expect(treatments[2]).toMatchObject({ mean: none, meanBedsRemoved: inBeds ? none : null, letters: "" });
  });
});

describe("nothing is compared", () => {
  it.each<[string, readonly Row[], string | null, string]>([
    ["without plants of the usual", rowsOf({ Bare: ["lost"], Straw: [14, 15], Bark: [16, 18] }), "Bare", "Bare"],
    ["without plants of all but one", rowsOf({ Bare: [10, 11, 12], Straw: ["lost", "dead"] }), null, "Straw"],
    ["without plants of the only other", rowsOf({ Bare: [10, 11, 12], Straw: ["lost", "dead"] }), "Bare", "Straw"],
    ["without any plant", rowsOf({ Bare: ["lost"], Straw: ["dead"] }), null, "Bare"],
    ["in beds", plots("Bare 10 1, Straw lost 1, Bare 12 2, Straw lost 2"), "Bare", "Straw"],
  ])("%s", (_what, rows, usual, nothingIn) => {
    const answer = many(rows, { usual });
    expect(answer).toMatchObject({ nothingIn, pAllTogether: none, unevenness: none, df: none });
    expect([answer.pairs(), answer.sumsOfSquares()]).toEqual([[], null]);
    expect(answer.treatments.map(({ againstUsual, letters }) => [againstUsual, letters])).toEqual(
      answer.treatments.map(() => [null, ""]),
    );
    const inBeds = rows[0]?.[2] !== undefined;
    expect(answer.treatments.map(({ meanBedsRemoved }) => meanBedsRemoved)).toEqual(
      answer.treatments.map(() => (inBeds ? none : null)),
    );
    const raised = codes(answer.cautions());
    expect(raised).toEqual(expect.arrayContaining(["C03", "C04", "C12"]));
    expect(raised).not.toContain("C22");
  });
});

describe("treatments that share no bed with most", () => {
  it.each<[string, readonly Row[], readonly string[]]>([
    ["the first named", plots("Bark 10 1, Bark 11 2, Bare 12 3, Straw 13 3, Bare 14 4, Straw 15 4"), ["Bark"]],
    ["the last named", plots("Bare 10 3, Straw 11 3, Bare 12 4, Straw 13 4, Bark 14 1, Bark 15 2"), ["Bark"]],
    ["two, each by itself", plots("Bark 10 1, Bare 11 3, Straw 12 3, Wool 13 2, Wool 14 4"), ["Bark", "Wool"]],
    ["two with each other", plots("Bark 10 1, Wool 11 1, A 12 2, B 13 2, B 14 3, C 15 3"), ["Bark", "Wool"]],
  ])("are named: %s", (_what, rows, apart) => {
    expect(asked(rows, {})).toEqual({ problem: "no-shared-bed", apart });
  });

  // ignoring beds, which differ far more than the treatments, the same plants would say nothing
  it("a plant that alone links them is not called deciding: without it nothing can be compared", () => {
    const shared = plots(
      "Bare 100 1, Straw 149 1, Bare 200 2, Straw 251 2, Bare 300 3, Straw 350 3, Bare 400 4, Straw 452 4, Bare 500 5, Straw 548 5",
    );
    const linked = plots("Straw 350 6, Bark 330 6, Bark 320 7");
    const { treatments, cautions } = many([...shared, ...linked], { usual: "Bare" });
    expect(treatments.find(({ name }) => name === "Straw")?.againstUsual?.rangeVerdict).toMatch(/^up/);
    expect(codes(cautions())).not.toContain("C21");
  });
});

describe("own unevenness", () => {
  // R: oneway.test(c(10, 12, 11, 14, 15, 17, 12, 9) ~ rep(c("a", "b", "c"), c(3, 3, 2))); all unevennesses: sqrt(sum((n-1)*(sd/mean)^2)/sum(n-1))
  it("gives Welch's F of all, and letters; no sums of squares", () => {
    const own = many(rowsOf({ Bare: [10, 12, 11], Straw: [14, 15, 17], Bark: [12, 9] }), { how: "own unevenness" });
    near("p", Number(own.pAllTogether), 0.103479445332408, { relative: 1e-12 });
    near("df", Number(own.df), 2.31294297667302, { relative: 1e-12 });
    near("unevenness", Number(own.unevenness), 0.124252986617616, { relative: 1e-12 });
    expect(own.sumsOfSquares()).toBeNull();
    expect(own.treatments.map(({ letters }) => letters)).not.toContain("");
  });

  it.each<[string, Readonly<Record<string, readonly number[]>>, string, number]>([
    ["one has one plant", { Bare: [10, 12, 11], Straw: [14, 15], Bark: [12] }, "one-plant", 0.07938733506],
    ["two plants of one are alike", { Bare: [10, 12, 11], Straw: [14, 15], Bark: [12, 12] }, "all-equal", 0.0687514489],
  ])("has no F of all where %s", (_what, plants, absent, unevenness) => {
    expect(many(rowsOf(plants), { how: "own unevenness" })).toMatchObject({
      pAllTogether: { absent },
      df: { absent },
      unevenness: expect.closeTo(unevenness, 9),
    });
  });
});
