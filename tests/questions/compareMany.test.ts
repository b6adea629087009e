import { expect, it } from "vitest";
import { isProblem } from "../../src/nouns/problem";
import { compareMany } from "../../src/questions/compareMany";
import { toCellRange } from "../../src/ranges/toCellRange";
import { given } from "./range";

const range = (argument: string, values: readonly unknown[]) =>
  toCellRange(
    argument,
    values.map((value) => [value]),
    { address: null, zerosVerified: true },
  );

function found(amounts: readonly unknown[], treatments: readonly unknown[], beds: readonly unknown[] | null = null) {
  const given = { amounts: range("amounts", amounts), treatments: range("treatments", treatments) };
  const answer = compareMany({
    ...given,
    beds: beds === null ? null : range("beds", beds),
    usual: range("usual", ["usual"]),
  });
  if (isProblem(answer)) throw new Error(answer.problem);
  return answer;
}

const usual = Array<string>(6).fill("usual");
const tried = Array<string>(6).fill("new");

it("rows without a treatment are left out and told", () => {
  const { leftOut, treatments } = found([1, 2, 3, 4, 9], ["usual", "usual", "new", "new", null]);
  expect(leftOut).toMatchObject([{ row: 5 }]);
  expect(treatments.map(({ plants }) => plants.length)).toEqual([2, 2]);
});

it("a bed with one treatment is idle", () => {
  const labels = ["usual", "new", "usual", "new", "usual", "new", "usual"];
  expect(found([1, 2, 2, 4, 3, 5, 4], labels, [1, 1, 2, 2, 3, 3, 4]).idleBeds).toEqual(["4"]);
});

it("two treatments in four beds lean at most: the rule for pairs", () => {
  const amounts = [10, 20, 11, 22, 12, 21, 10, 21];
  const labels = ["usual", "new", "usual", "new", "usual", "new", "usual", "new"];
  const [first] = found(amounts, labels, [1, 1, 2, 2, 3, 3, 4, 4]).treatments;
  expect(first?.againstUsual?.rangeVerdict).toBe("up-enough");
  expect(first?.againstUsual?.verdict).toBe("leaning-up");
});

it("a lost plant raises C03 and C04, and place and season come last", () => {
  const { cautions } = found([10, 11, 12, 10, 11, 12, 13, 13, 14, 13, 14, "lost"], [...usual, ...tried]);
  const codes = cautions().map(({ caution }) => caution);
  expect(codes).toEqual(expect.arrayContaining(["C03", "C04"]));
  expect(codes.at(-1)).toBe("C12");
});

// without the plant of 13.5, 11.1 stands 1 above the average of plants that stray by 0.9
it("the plant without which a verdict is lost by far is named (C21)", () => {
  const { cautions } = found([9, 10, 11, 9, 10, 11, 11.1, 13.5], [...usual, "new", "new"]);
  expect(cautions()).toContainEqual({ caution: "C21", place: expect.objectContaining({ row: 8 }) });
  const steady = found([9, 10, 11, 9, 10, 11, 12.2, 12.4], [...usual, "new", "new"]);
  expect(steady.cautions().map(({ caution }) => caution)).not.toContain("C21");
});

it("nothing rests on one plant where the gap is wide", () => {
  const { cautions } = found([10, 11, 12, 10, 11, 12, 20, 21, 22, 20, 21, 22], [...usual, ...tried]);
  expect(cautions().map(({ caution }) => caution)).not.toContain("C21");
});

const named = given({
  amounts: [4, 5, 6, 7, 8, 9],
  treatments: ["Bare soil", "Bare soil", "Straw", "Straw", "Bark", "Bark"],
});

it("without a word on how, all are set against the usual where one is named, else each against each", () => {
  expect(compareMany(named)).toMatchObject({ how: "all pairs", usual: null });
  expect(compareMany({ ...named, ...given({ usual: null }) })).toMatchObject({ how: "all pairs", usual: null });
  expect(compareMany({ ...named, ...given({ usual: " bare  SOIL" }) })).toMatchObject({
    how: "against usual",
    usual: "Bare soil",
  });
  expect(compareMany({ ...named, ...given({ usual: "Straw", how: "all pairs" }) })).toMatchObject({
    how: "all pairs",
    usual: "Straw",
  });
});

it("the usual is the name of one treatment", () => {
  const names = ["Bare soil", "Straw", "Bark"];
  expect(compareMany({ ...named, ...given({ usual: ["Straw", "Bark"] }) })).toEqual({
    problem: "one-cell-wanted",
    argument: "usual",
    rows: 2,
    columns: 1,
  });
  expect(compareMany({ ...named, ...given({ usual: "bare" }) })).toEqual({
    problem: "unknown-treatment",
    given: "bare",
    names,
  });
  expect(compareMany({ ...named, ...given({ how: "against usual" }) })).toEqual({ problem: "usual-not-named", names });
});

it("twenty treatments are compared, not one more", () => {
  const plants = (count: number) =>
    given({
      amounts: Array.from({ length: 2 * count }, (_, at) => 10 + (at % 7)),
      treatments: Array.from({ length: 2 * count }, (_, at) => `mulch ${at % count}`),
    });
  expect(compareMany(plants(20))).toMatchObject({ finding: "many-treatments" });
  expect(compareMany(plants(21))).toEqual({ problem: "too-many-treatments", count: 21, most: 20 });
  expect(compareMany(plants(1))).toEqual({ problem: "too-few-treatments", names: ["mulch 0"] });
});
