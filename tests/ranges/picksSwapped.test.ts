import { describe, expect, it } from "vitest";
import type { Cell } from "../../src/nouns/cell";
import { picksSwapped } from "../../src/ranges/picksSwapped";
import { range } from "../questions/range";

/** Columns below a heading each. */
interface Columns {
  readonly plants?: readonly Cell[];
  readonly amounts: readonly Cell[];
  readonly dates?: readonly Cell[];
  readonly treatments?: readonly Cell[];
}

function swapped({ plants = ["B1", "B2"], amounts, dates, treatments }: Columns) {
  return picksSwapped({
    owners: range("plants", ["plant", ...plants]),
    ownerKind: "plant",
    amounts: range("amounts", ["grams", ...amounts]),
    dates: dates ? range("dates", ["date", ...dates]) : null,
    lossNotes: null,
    besides: [null, treatments ? range("treatments", ["mulch", ...treatments]) : null],
  });
}
const beside = (first: string) => ({ problem: "ranges-swapped", first, second: "amounts" });
const fifty = Array.from({ length: 50 }, (_, at) => `Bed ${String.fromCharCode(97 + (at % 26))}`);

describe("picksSwapped finds the amounts in another argument", () => {
  it("where they hold names and the plants or treatments numbers", () => {
    expect(swapped({ amounts: ["Straw", "Bare"], plants: [300, 310] })).toEqual(beside("plants"));
    expect(swapped({ amounts: ["Straw", "Bare"], treatments: [300, 310] })).toEqual(beside("treatments"));
    expect(swapped({ amounts: ["Straw", null, "Bare"], plants: [300, null, "lost"] })).toEqual(beside("plants"));
  });

  it("where they hold dates, also typed as text, and the dates are none", () => {
    expect(swapped({ amounts: [45_112, 45_113], dates: [300, 310] })).toEqual(beside("dates"));
    expect(swapped({ amounts: ["2023-07-05", "2023-07-06"], dates: [300, 310] })).toEqual(beside("dates"));
    expect(swapped({ amounts: [45_112, 45_113, 300], dates: [300, "310 g", 45_112] })).toEqual(beside("dates"));
  });
});

describe("picksSwapped leaves alone", () => {
  it.each<[string, Columns]>([
    ["amounts with a note among them", { amounts: ["slugs", 5], plants: [1, 2] }],
    ["amounts that are all empty, beside plants with numbers", { amounts: [null, " "], plants: [1, 2] }],
    ["notes beside names", { amounts: ["slugs", "rain"], treatments: ["Straw", "Bare"] }],
    ["notes beside plants of which one has a name", { amounts: ["slugs", "rain"], plants: ["A", 2] }],
    ["notes beside plants that are all lost", { amounts: ["slugs", "rain"], plants: ["lost", "dead"] }],
    ["notes beside labels that are dates", { amounts: ["slugs", "rain"], plants: [45_112, 45_113] }],
    ["notes beside days that are counted", { amounts: ["slugs", "rain"], dates: [1, 2] }],
    ["amounts beside days that are counted", { amounts: [300, 310], dates: [1, 2] }],
    ["heavy amounts beside days that are counted", { amounts: [20_500, 21_000], dates: [1, 2] }],
    ["amounts of which half look like dates", { amounts: [45_112, 300], dates: [1, 2] }],
    ["amounts that look like dates, where no dates are given", { amounts: [45_112, 45_113] }],
    ["amounts that look like dates beside dates", { amounts: [45_112, 45_113], dates: ["5 July", "6 July"] }],
  ])("%s", (_, columns) => {
    expect(swapped(columns)).toBeNull();
  });
});

it("picksSwapped looks at the first fifty filled cells", () => {
  const plants = [1, 2, 3];
  expect(swapped({ amounts: [...fifty, 5], plants })).toEqual(beside("plants"));
  expect(swapped({ amounts: [...fifty.slice(1), 5], plants })).toBeNull();
  expect(swapped({ amounts: [null, ...fifty.slice(1), 5], plants })).toBeNull();
});
