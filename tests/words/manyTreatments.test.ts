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

/** Every treatment with one verdict. */
const allWith = (verdict: Verdict, change: number, names: readonly string[], usual = "bare soil") =>
  tellManyTreatments(
    manyTreatments({
      usual,
      treatments: names.map((name) =>
        treatment({ name, plants: 8, mean: 5, againstUsual: against({ change, changeRange: noRange, verdict }) }),
      ),
    }),
  ).finding();

it.each([
  ["level", 0.04, "Straw (4 % more) came out close to bare soil."],
  ["open-down", -0.07, "Straw (7 % less) is not settled, but may be down."],
  ["open", 0, "Straw is not settled."],
] as const)("%s: says what came out of one treatment", (verdict, change, sentence) => {
  expect(allWith(verdict, change, ["straw"])).toContain(sentence);
});

it("says it of several treatments in the plural, and leaves their names alone", () => {
  expect(allWith("open", 0, ["straw", "bark"])).toContain("Straw and bark are not settled.");
  expect(allWith("few", 0, ["straw", "bark"])).toContain("Straw and bark have too few plants to tell.");
  expect(allWith("level", 0, ["straw", "bark"])).toContain("Straw and bark came out close to bare soil.");
  expect(allWith("level", 0, ["straw", "bark"], "what is there")).toContain("close to what is there.");
  expect(allWith("level", 0, ["straw", "bark"], "what has grown")).toContain("close to what has grown.");
});

it("tells a big change by its percent alone where it stands in brackets", () => {
  expect(allWith("open", 2, ["straw"])).toContain("Straw (200 % more) is not settled.");
});

it("names the treatments without usable plants, one or several", () => {
  const finding = (names: readonly string[]) =>
    tellManyTreatments(
      manyTreatments({
        usual: null,
        treatments: [
          treatment({ name: "straw", plants: 8, mean: 5 }),
          ...names.map((name) => treatment({ name, plants: 0, mean: 0 })),
        ],
      }),
    ).finding();
  expect(finding(["bark"])).toContain(" Bark has no usable plants.");
  expect(finding(["bark", "hay"])).toContain(" Bark and hay have no usable plants.");
});
