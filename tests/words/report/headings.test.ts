import { expect, it } from "vitest";
import { aboutOf, defaultQuestion } from "../../../src/words/report/headings";
import { manyTreatments, treatment } from "../manyRecords";
import { group, twoTreatments } from "../records";
import { typicalTellable } from "./tellable";

const typical = (title: string) => {
  const [, finding] = typicalTellable.find(([one]) => one === title) ?? [];
  if (finding === undefined) throw new Error(`no typical finding "${title}"`);
  return finding;
};
const lessWanted = { size: 0.1, lessWanted: true, given: true };
const named = (name: string) => treatment({ name, plants: 4, mean: 3 });
const many = (usual: string | null, others: readonly string[]) =>
  manyTreatments({
    usual,
    treatments: [...others.map(named), ...(usual === null ? [] : [{ ...named(usual), isUsual: true }])],
  });
const slugs = twoTreatments({
  usual: group("usual", { name: "Bare soil", plants: 4, mean: 9, unevenness: 0.3 }),
  tried: group("new", { name: "Wool", plants: 4, mean: 6, unevenness: 0.3 }),
  difference: -3,
  differenceRange: { low: -7, high: 1 },
  change: -1 / 3,
  changeRange: { low: -0.7, high: 0.2 },
  pValue: 0.1,
  verdict: "open",
  swap: null,
  worthwhile: lessWanted,
});

it.each([
  ["several crops", typical("MANYTRIALS six crops"), "Does Straw give more than Bare soil, over several crops?"],
  ["two seasons", typical("MANYTRIALS two seasons"), "Does New give more than Old, over several seasons?"],
  ["money", typical("WORTHIT straw pays"), "Does Straw pay for what it costs?"],
  ["totals", typical("TOTALSONLY berries under a coarse net"), "Does Coarse net give more per plant than No net?"],
  ["two treatments, fewer wanted", slugs, "Does Wool give less per plant than Bare soil?"],
  ["all pairs", many(null, ["Straw", "Wool"]), "Which of these ways differ?"],
  ["a usual", many("Bare soil", ["Straw"]), "Does any of these ways give more per plant than Bare soil?"],
  [
    "a usual, fewer wanted",
    { ...many("Bare soil", ["Straw"]), worthwhile: lessWanted },
    "Does any of these ways give less per plant than Bare soil?",
  ],
])("asks of %s what it answers", (_, finding, question) => {
  expect(defaultQuestion([finding])).toBe(question);
});

it("names the ways in up to 48 characters, else counts them", () => {
  const others = ["Straw mulch", "Wool felt", "Leaf mould"];
  const list = "Straw mulch, Wool felt, Leaf mould and Wood chip";
  expect(list).toHaveLength(48);
  expect(aboutOf(many("Bare soil", [...others, "Wood chip"]))).toBe(`${list} against Bare soil`);
  expect(aboutOf(many("Bare soil", [...others, "Wood chips"]))).toBe("4 ways against Bare soil");
  expect(aboutOf(many(null, others))).toBe("3 ways side by side");
});
