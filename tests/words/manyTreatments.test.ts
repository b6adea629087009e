import { expect, it } from "vitest";
import type { AgainstUsual } from "../../src/nouns/findings/manyTreatments";
import type { Verdict } from "../../src/nouns/verdict";
import { tellManyTreatments } from "../../src/words/manyTreatments";
import { against, manyTreatments, treatment } from "./manyRecords";

const noRange = { low: { absent: "no-lower-limit" }, high: { absent: "no-upper-limit" } } as const;

function told(name: string, lessWanted: boolean, againstUsual: AgainstUsual): string {
  const found = manyTreatments({
    usual: "bare",
    worthwhile: { size: 0.1, lessWanted, given: true },
    treatments: [treatment({ name, plants: 3, mean: 5, againstUsual })],
  });
  return tellManyTreatments(found).finding();
}

it.each([
  ["leaning-up", false, "Straw (50 % more) is ahead so far, but so few plants are only a hint."],
  ["leaning-down", false, "Straw (50 % less) is behind so far, but so few plants are only a hint."],
  ["leaning-up", true, "Straw (50 % more) is higher so far, but so few plants are only a hint."],
  ["leaning-down", true, "Straw (50 % less) is lower so far, but so few plants are only a hint."],
] as const)("%s, less wanted %s: ahead and behind only where more is wanted", (verdict, lessWanted, sentence) => {
  const change = verdict === "leaning-up" ? 0.5 : -0.5;
  expect(told("straw", lessWanted, against({ change, changeRange: noRange, verdict }))).toContain(sentence);
});

it.each([
  ["up-small", 0.0001, "Straw gave hardly more than bare: too little to matter."],
  ["down-small", -0.0001, "Straw gave hardly less than bare: too little to matter."],
] as const satisfies readonly (readonly [Verdict, number, string])[])(
  "%s by less than is shown keeps its direction",
  (verdict, change, sentence) => {
    expect(told("straw", false, against({ change, changeRange: noRange, verdict }))).toContain(sentence);
  },
);
