import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Id, matrix, replyOf } from "./call";
import {
  amounts,
  curve,
  days,
  everyPlant,
  expectAlike,
  halves,
  type Log,
  labelsOf,
  log,
  mulches,
  plants,
  runs,
  tally,
  turned,
} from "./lawful";

describe("the order of rows changes nothing", () => {
  it("PERPLANT and UNEVENNESS", () => {
    fc.assert(
      fc.property(plants, (values) => {
        const other = [...values.slice(1, -1).reverse(), 61.37, 17.9];
        expectAlike(matrix("PERPLANT", values, "table"), matrix("PERPLANT", other, "table"));
        expectAlike(matrix("UNEVENNESS", values), matrix("UNEVENNESS", other));
      }),
      runs,
    );
  });

  it("MANYTRIALS", () => {
    fc.assert(
      fc.property(plants, (usual) => {
        const tried = usual.map((value, at) => value * (0.9 + 0.1 * at));
        expectAlike(
          matrix("MANYTRIALS", usual, tried, "table"),
          matrix("MANYTRIALS", turned(usual), turned(tried), "table"),
        );
      }),
      runs,
    );
  });

  it("TALLYPICKS, PICKCURVE and HALFPICKED", () => {
    fc.assert(
      fc.property(log, (picks) => {
        const other = turned(picks);
        expectAlike(tally(picks), tally(other));
        expect(halves(other)).toEqual(halves(picks));
        for (const [name, sums] of curve(picks))
          expectAlike([[...sums.values()]], [[...(curve(other).get(name)?.values() ?? [])]]);
      }),
      runs,
    );
  });
});

describe("a pick written as two of the same day", () => {
  it("changes no total, no running harvest and no half-harvest day", () => {
    fc.assert(
      fc.property(log, fc.integer({ min: 0, max: 3 }), (picks, which) => {
        const split = picks.flatMap((one, at) =>
          at === which
            ? [
                { ...one, amount: one.amount / 4 },
                { ...one, amount: (3 * one.amount) / 4 },
              ]
            : [one],
        );
        const totals = (of: Log) => tally(of).map(([plant, , , total]) => [plant, total]);
        expectAlike(totals(picks), totals(split));
        expect(halves(split)).toEqual(halves(picks));
        for (const [name, sums] of curve(picks))
          expectAlike([[...sums.values()]], [[...(curve(split).get(name)?.values() ?? [])]]);
      }),
      runs,
    );
  });
});

describe("letter case and spaces of names change nothing", () => {
  it("TALLYPICKS and HALFPICKED", () => {
    fc.assert(
      fc.property(
        log,
        fc.infiniteStream(
          fc.constantFrom<(name: string) => string>(
            (name) => name,
            (name) => name.toUpperCase(),
            (name) => ` ${name} `,
          ),
        ),
        (picks, spellings) => {
          const spelled = labelsOf(picks).map((name) => spellings.next().value?.(name) ?? name);
          const totals = matrix("TALLYPICKS", spelled, days(picks), amounts(picks), null, null, null, everyPlant).map(
            ([plant, , , total]) => [plant, total],
          );
          expectAlike(
            tally(picks).map(([plant, , , total]) => [plant, total]),
            totals,
          );
        },
      ),
      runs,
    );
  });
});

describe("days moved along the calendar", () => {
  it("move no half-harvest day that is counted from the start, and no share of the running harvest", () => {
    fc.assert(
      fc.property(log, fc.integer({ min: -300, max: 300 }), (picks, later) => {
        const moved = picks.map((one) => ({ ...one, day: one.day + later }));
        const half = (of: Log, start: number) => matrix("HALFPICKED", labelsOf(of), days(of), amounts(of), null, start);
        expect(half(moved, 45_470 + later)).toEqual(half(picks, 45_470));
        const sums = (of: Log) =>
          matrix("PICKCURVE", mulches(of), days(of), amounts(of))
            .slice(1)
            .map(([, ...cells]) => cells);
        expectAlike(sums(picks), sums(moved));
      }),
      runs,
    );
  });
});

describe("headings above the columns change nothing", () => {
  it.each<[Id, readonly (readonly unknown[])[]]>([
    [
      "UPDOWN",
      [
        [30.1, 21, 28.5],
        [33, 41, 29.4],
      ],
    ],
    [
      "MANYTRIALS",
      [
        [30.1, 21, 28.5],
        [33, 41, 29.4],
      ],
    ],
    [
      "TALLYPICKS",
      [
        ["P1", "P2", "P1"],
        [45_474, 45_475, 45_480],
        [3, 4.5, 7],
      ],
    ],
    [
      "HALFPICKED",
      [
        ["P1", "P2", "P1"],
        [45_474, 45_475, 45_480],
        [3, 4.5, 7],
      ],
    ],
    ["LOOKOVER", [[30.1, 21, 28.5]]],
  ])("%s", (id, columns) => {
    const headings = columns.length === 3 ? ["Plant", "Date", "Picked"] : ["Bare soil", "Straw"];
    const headed = columns.map((column, at) => [headings[at], ...column]);
    expect(replyOf(id, ...headed)).toEqual(replyOf(id, ...columns));
  });
});
