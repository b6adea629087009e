import { describe, expect, it } from "vitest";
import { near } from "../near";
import totals from "../reference/totals.json";
import { cell, labels, matrix, number, refused } from "./call";

const berries = [412, 30, 655, 30] as const;

it("answers in a sentence, and has ten labels in METHODS' order", () => {
  const says = "Real if plants vary by less than 92 %; at 35 % the change may be +33 % to +90 %.";
  expect(cell("TOTALSONLY", ...berries)).toBe(says);
  const table = matrix("TOTALSONLY", ...berries, "table");
  expect(labels(table)).toEqual([
    "What it says",
    "Per plant, usual",
    "Per plant, new",
    "Change",
    "Change low",
    "Change high",
    "Real if unevenness is below",
    "Counts only, low",
    "Counts only, high",
    "Cautions",
  ]);
  for (const [label, value] of table) expect(cell("TOTALSONLY", ...berries, label)).toBe(value);
});

it("strawberries under netting: +59.0 % (33.2 … 89.8), by counts alone 40.3 … 80.3, real below 91.6 % (METHODS 10)", () => {
  near("change", 100 * number("TOTALSONLY", ...berries, "Change"), 58.9805825, { absolute: 5e-8 });
  near("low", 100 * number("TOTALSONLY", ...berries, "Change low"), 33.1745784, { absolute: 2e-6 });
  near("high", 100 * number("TOTALSONLY", ...berries, "Change high"), 89.7871645, { absolute: 2e-6 });
  near("counts low", 100 * number("TOTALSONLY", ...berries, "Counts only, low"), 40.331389, { absolute: 5e-7 });
  near("counts high", 100 * number("TOTALSONLY", ...berries, "Counts only, high"), 80.271822, { absolute: 5e-7 });
  near("real", number("TOTALSONLY", ...berries, "Real if unevenness is below"), 0.916, { absolute: 5e-4 });
});

const asR = { relative: 1e-9, absolute: 1e-11 };
/** Without the ones whose "plants" are no whole numbers. */
const both = Object.values(totals.cases).flatMap((known) =>
  "counts35" in known && known.totals.every(Number.isInteger) ? [known] : [],
);

it.each(both)("$totals, by R", ({ totals: call, exact, counts35, counts60, weights35, real_below }) => {
  const counts = (label: string, unevenness: number | null = null) =>
    number("TOTALSONLY", ...call, label, unevenness, "count");
  near("change", counts("Change"), Number(exact.ratio) - 1, asR);
  near("low", counts("Change low"), counts35.low - 1, asR);
  near("high", counts("Change high"), counts35.high - 1, asR);
  near("low at 60 %", counts("Change low", 0.6), counts60.low - 1, asR);
  near("high at 60 %", counts("Change high", 0.6), counts60.high - 1, asR);
  near("counts low", counts("Counts only, low"), Number(exact.low) - 1, asR);
  near("counts high", counts("Counts only, high"), Number(exact.high) - 1, asR);
  const weights = (label: string) => number("TOTALSONLY", ...call, label, null, "weight");
  near("low of weights", weights("Change low"), weights35.low - 1, asR);
  near("high of weights", weights("Change high"), weights35.high - 1, asR);
  near("real below", weights("Real if unevenness is below"), real_below, asR);
});

describe("a total of 0, by R's exact one-sided bound", () => {
  it.each([
    ["none_usual", "5 from 2 plants and 0 from 2: at least 0.91 times as many."],
    ["none_new", "0 from 2 plants and 5 from 2: at most 1.1 times as many."],
    ["none_of_many", "3 from 100 plants and 0 from 100: at least 0.41 times as many."],
  ] as const)("%s", (name, says) => {
    const { totals: call, exact } = totals.cases[name];
    expect(cell("TOTALSONLY", ...call)).toBe(says);
    expect(cell("TOTALSONLY", ...call, "Change")).toBe("a total is 0: no percent");
    const [label, open, shut] =
      call[0] === 0
        ? (["Counts only, low", "Counts only, high", exact.low] as const)
        : (["Counts only, high", "Counts only, low", exact.high] as const);
    near(label, number("TOTALSONLY", ...call, label), Number(shut) - 1, { relative: 1e-12 });
    expect(cell("TOTALSONLY", ...call, open)).toMatch(/^no (upper|lower) limit/);
  });
});

it("answers in text where it has no answer", () => {
  expect(cell("TOTALSONLY", 0, 2, 0, 2)).toBe("No answer: both totals are 0");
  expect(cell("TOTALSONLY", "forgot", 2, 7, 2)).toBe("No answer: no number in usual_total");
  expect(cell("TOTALSONLY", "forgot", 2, 7, 2, "Change")).toBe("no usable plants");
});

it("small counts are real at no unevenness, and say so", () => {
  expect(cell("TOTALSONLY", 3, 30, 6, 30)).toMatch(/^Not settled even if all plants were alike; at 35 % /);
  expect(cell("TOTALSONLY", 3, 30, 6, 30, "Real if unevenness is below")).toBe("never: luck in the counts may do it");
});

it("weights hold no range from counting", () => {
  expect(cell("TOTALSONLY", 24147, 8, 30454, 7, "Counts only, low")).toBe("weights: no such range");
  expect(cell("TOTALSONLY", 24147, 8, 30454, 7, "words")).toMatch(/^The new gave 4350 a plant \(7 plants\)/);
});

it("a word of measure in show's place is told where it goes", () => {
  expect(refused("TOTALSONLY", ...berries, "weight").message).toBe(
    "“weight” is a word for measure; it goes two places further on.",
  );
});
