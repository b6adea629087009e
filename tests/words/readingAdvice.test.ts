import { describe, expect, it } from "vitest";
import type { ReadColumn } from "../../src/nouns/findings/lookedOver";
import type { Remark } from "../../src/nouns/reading";
import { readingAdvice } from "../../src/words/readingAdvice";
import { beginsWithLostWord, isNoneWord } from "./dataWords";
import { neverSay, readingGrade, sentencesOf, wordsOf } from "./plainEnglish";
import { cell } from "./records";

const day = { year: 2023, month: 7, day: 5 };
const amount = { value: 235, unit: "g" };
const alike = { kind: "names-alike", like: "Bare soil", uses: 1, likeUses: 80 } as const;

/** Every remark by what stands out about it, and the column it may stand in. */
const remarks: readonly (readonly [string, Remark, ReadColumn["kind"]])[] = [
  ["a note", { kind: "unreadable", why: "text" }, "amount"],
  ["a unit nobody can tell", { kind: "unreadable", why: "unit-unclear" }, "amount"],
  ["TRUE", { kind: "unreadable", why: "true-or-false" }, "amount"],
  ["one of two numbers", { kind: "unreadable", why: "doubtful-number", numbers: [1250, 1.25] }, "amount"],
  ["no date", { kind: "unreadable", why: "not-a-date" }, "date"],
  ["one of two days", { kind: "unreadable", why: "order", days: [day] }, "date"],
  ["a day of no year", { kind: "unreadable", why: "year", days: [day] }, "date"],
  ["a total's label", { kind: "possible-total", row: "label" }, "label"],
  ["an amount without a name", { kind: "possible-total", row: "no-label" }, "amount"],
  ["a sum", { kind: "possible-total", row: "total" }, "amount"],
  ["an average", { kind: "possible-total", row: "average" }, "amount"],
  ["equal to the average", { kind: "possible-total", row: "equals-average" }, "amount"],
  ["entered twice", { kind: "possible-double", like: cell("A218") }, "date"],
  ["a date Excel made", { kind: "excel-date", day }, "amount"],
  ["far from the rest", { kind: "odd-size", because: "far" }, "amount"],
  ["beyond the limits", { kind: "odd-size", because: "beyond-limits" }, "amount"],
  ["below zero", { kind: "odd-size", because: "below-zero" }, "amount"],
  ["huge", { kind: "odd-size", because: "huge" }, "amount"],
  ["an error", { kind: "error" }, "amount"],
  ["an empty amount", { kind: "not-recorded", why: "empty" }, "amount"],
  ["an empty date", { kind: "not-recorded", why: "empty" }, "date"],
  ["an empty name", { kind: "not-recorded", why: "empty" }, "label"],
  ["an empty row", { kind: "not-recorded", why: "empty-row" }, "date"],
  ["forgot", { kind: "not-recorded", why: "word" }, "amount"],
  ["another spelling", { ...alike, same: true }, "label"],
  ["another name", { ...alike, same: false }, "label"],
  ["used once", { kind: "name-once" }, "label"],
  ["lost", { kind: "lost" }, "amount"],
  ["none", { kind: "none-as-zero" }, "amount"],
  ["zero", { kind: "zero" }, "amount"],
  ["a unit", { kind: "unit-converted", amount }, "amount"],
  ["a mark", { kind: "mark-removed", amount }, "amount"],
  ["a date of the column's order", { kind: "date-settled", serial: 45_112 }, "date"],
];

it("says the approved words for every remark", async () => {
  const lines = remarks.map(([title, remark, kind]) => `${title}\n  ${readingAdvice(remark, kind)}`);
  await expect(`${lines.join("\n")}\n`).toMatchFileSnapshot("approved/reading-advice.txt");
});

it("every kind of remark is among them", () => {
  const kinds: Readonly<Record<Remark["kind"], true>> = {
    unreadable: true,
    "possible-total": true,
    "possible-double": true,
    "excel-date": true,
    "odd-size": true,
    error: true,
    "not-recorded": true,
    "names-alike": true,
    "name-once": true,
    lost: true,
    "none-as-zero": true,
    zero: true,
    "unit-converted": true,
    "mark-removed": true,
    "date-settled": true,
  };
  expect(new Set(remarks.map(([, { kind }]) => kind))).toEqual(new Set(Object.keys(kinds)));
});

describe.each(remarks)("%s", (_, remark, kind) => {
  const advice = readingAdvice(remark, kind);

  it("reads at grade 8 or below, in sentences of at most 25 words", () => {
    expect(readingGrade(advice)).toBeLessThanOrEqual(8);
    expect(sentencesOf(advice).filter((sentence) => wordsOf(sentence).length > 25)).toEqual([]);
  });

  it("claims nothing that METHODS 6.3 forbids, and is never read as data", () => {
    expect(neverSay.filter((claim) => claim.test(advice))).toEqual([]);
    expect(isNoneWord(advice) || beginsWithLostWord(advice)).toBe(false);
  });
});
