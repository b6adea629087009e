import { expect, it } from "vitest";
import { isProblem } from "../../src/nouns/problem";
import { compareMany } from "../../src/questions/compareMany";
import reference from "../reference/manySwap.json";
import { codes, found, given } from "./range";

function comparison(name: string, how = "against usual") {
  const { value, treatment, bed } = reference.cases.find((one) => one.name === name) ?? expect.fail(`no ${name}`);
  const treatments = treatment.map((at) => ["bare", "straw", "bark"][at] ?? "");
  const answer = compareMany(given({ amounts: value, treatments, beds: bed, usual: "bare", how }));
  return isProblem(answer) ? expect.fail(answer.problem) : answer;
}

// p-values of Dunnett's integral and of all relabelings, both from R (tests/reference/manySwap.R)
it.each(["above the bar by Dunnett, below it by swaps", "below the bar by Dunnett, above it by swaps"])(
  "C22 where the comparison is a close one and the label swap says otherwise: %s",
  (name) => {
    const { cautions, quickCautions } = comparison(name);
    expect(codes(cautions())).toContain("C22");
    expect(codes(quickCautions())).toEqual(["C12"]);
  },
);

it.each(["close, and both above", "below the bar by far, above it by swaps"])("no C22: %s", (name) => {
  expect(codes(comparison(name).cautions())).not.toContain("C22");
});

it("no C22 in three beds, where a comparison leans at most", () => {
  const { cautions } = comparison("in three beds, above the bar by Dunnett, below it by swaps");
  expect(codes(cautions())).not.toContain("C22");
});

// of the three pairs, the first is a close one too, below the bar either way
it("with all pairs judged together, C22 also for two new treatments, though only those with the usual are shown", () => {
  const name = "all pairs, the last one above the bar by Tukey, below it by swaps";
  expect(codes(comparison(name, "all pairs").cautions())).toContain("C22");
});

it("no C22 where labels may not be swapped, or no plant varies", () => {
  const treatments = Array.from({ length: 12 }, (_, at) => ["bare", "straw", "bark"][at % 3] ?? "");
  const own = { amounts: [4, 5, 6, 5, 7, 7, 6, 6, 8, 5, 8, 6], treatments, usual: "bare", how: "own unevenness" };
  for (const call of [own, { amounts: treatments.map(() => 4), treatments, usual: "bare" }]) {
    expect(codes(found(compareMany(given(call))).cautions())).not.toContain("C22");
  }
});
