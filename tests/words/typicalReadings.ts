import type { Finding } from "../../src/nouns/finding";
import type { LookedOver } from "../../src/nouns/findings/lookedOver";
import type { PlainCell, PlainNumbers } from "../../src/nouns/findings/plainNumbers";
import type { Remark } from "../../src/nouns/reading";
import { cell, row } from "./records";

/*
 * Typical findings of the functions that read cells. Figures: made up by hand, as they are counts of cells.
 */

const number: PlainCell = { is: "number", value: 300 };
const unread: PlainCell = {
  is: "refused",
  problem: { problem: "not-plain", given: "forgot", because: { why: "unreadable" } },
};

function plainNumbers(facts: Partial<Omit<PlainNumbers, "cautions">>, marks = 0): PlainNumbers {
  return {
    finding: "plain-numbers",
    unit: "g",
    cells: [],
    numbers: 0,
    readings: [],
    ...facts,
    cautions: () => (marks > 0 ? [{ caution: "C14", count: marks }] : []),
  };
}

function lookedOver(facts: Partial<Omit<LookedOver, "cautions">>, marks = 0): LookedOver {
  return {
    finding: "looked-over",
    cells: 0,
    numbers: 0,
    needLook: 0,
    from: 0,
    columns: [],
    readings: [],
    ...facts,
    cautions: () => (marks > 0 ? [{ caution: "C14", count: marks }] : []),
  };
}

/** Every kind that needs a look, for the sentence that names the first cells. */
const remarks: readonly Remark[] = [
  { kind: "unreadable", why: "text" },
  { kind: "possible-total", row: "label" },
  { kind: "possible-double", like: cell("A218") },
  { kind: "excel-date", day: { year: 2023, month: 7, day: 5 } },
  { kind: "odd-size", because: "far" },
  { kind: "error" },
  { kind: "not-recorded", why: "empty" },
  { kind: "names-alike", like: "Bare soil", uses: 1, likeUses: 80, same: false },
  { kind: "name-once" },
];

/** By the title of the approved file's section. */
export const typicalReadings: Readonly<Record<string, Finding>> = {
  "PLAINNUMBER one cell": plainNumbers({ cells: [[number]], numbers: 1 }, 1),
  "PLAINNUMBER fruit with a note": plainNumbers({
    unit: "count",
    cells: [
      [number, number],
      [unread, { is: "lost" }],
    ],
    numbers: 2,
  }),
  "LOOKOVER nothing there": lookedOver({}),
  "LOOKOVER all well": lookedOver({ cells: 331, numbers: 331 }),
  "LOOKOVER one cell": lookedOver({
    cells: 12,
    numbers: 11,
    needLook: 1,
    readings: [{ kind: "unreadable", why: "text", place: row("cells", 4), text: "2 (1 split)" }],
  }),
  ...Object.fromEntries(
    [0, 3, 6].map((from) => [
      `LOOKOVER cells that need a look, from kind ${from + 1}`,
      lookedOver(
        {
          cells: 1986,
          numbers: 651,
          needLook: 12,
          readings: remarks.slice(from).map((remark, at) => ({ ...remark, place: cell(`D${at + 2}`), text: "x" })),
        },
        6,
      ),
    ]),
  ),
};
