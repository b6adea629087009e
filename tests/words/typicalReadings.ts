import type { Finding } from "../../src/nouns/finding";
import type { PlainCell, PlainNumbers } from "../../src/nouns/findings/plainNumbers";

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
};
