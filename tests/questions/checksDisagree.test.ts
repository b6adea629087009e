import { expect, it } from "vitest";
import { isProblem } from "../../src/nouns/problem";
import { compareMany } from "../../src/questions/compareMany";
import reference from "../reference/manySwap.json";
import { codes, given } from "./range";

function comparison(name: string) {
  const { value, treatment, bed } = reference.cases.find((one) => one.name === name) ?? expect.fail(`no ${name}`);
  const treatments = treatment.map((at) => ["bare", "straw", "bark"][at] ?? "");
  const answer = compareMany(given({ amounts: value, treatments, beds: bed, usual: "bare" }));
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
