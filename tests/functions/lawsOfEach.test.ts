import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { near } from "../near";
import { type Id, matrix, replyOf } from "./call";

/** What must not change does not, what must scale scales: for the functions that laws.test.ts leaves out. */
const runs = { numRuns: 60, seed: 11 };

// the last is far from the rest, so that no range ends with its own average or total
const amount = fc.integer({ min: 200, max: 400 }).map((value) => value / 10);
const plants = fc.array(amount, { minLength: 3, maxLength: 7 }).map((values) => [61.37, ...values, 17.9]);
const factor = fc.constantFrom(0.001, 0.5, 1000);

const pick = fc.record({
  plant: fc.integer({ min: 1, max: 4 }),
  day: fc.integer({ min: 45_474, max: 45_520 }),
  amount,
});
/** A log of picks, of every plant one at least. */
const log = fc
  .array(pick, { minLength: 6, maxLength: 20 })
  .map((picks) => [...[1, 2, 3, 4].map((plant) => ({ plant, day: 45_480 + plant, amount: 25.3 + plant })), ...picks]);
type Log = readonly { readonly plant: number; readonly day: number; readonly amount: number }[];

const labelsOf = (picks: Log) => picks.map(({ plant }) => `Plant ${plant}`);
const mulches = (picks: Log) => picks.map(({ plant }) => (plant % 2 === 0 ? "Straw" : "Bare soil"));
const days = (picks: Log) => picks.map(({ day }) => day);
const amounts = (picks: Log) => picks.map((one) => one.amount);
const everyPlant = [1, 2, 3, 4].map((plant) => `Plant ${plant}`);

function tally(picks: Log): unknown[][] {
  return matrix("TALLYPICKS", labelsOf(picks), days(picks), amounts(picks), null, null, null, everyPlant);
}

function halves(picks: Log): ReadonlyMap<unknown, unknown> {
  return new Map(
    matrix("HALFPICKED", labelsOf(picks), days(picks), amounts(picks), null, 45_470).map(([plant, day]) => [
      plant,
      day,
    ]),
  );
}

function curve(picks: Log): ReadonlyMap<unknown, ReadonlyMap<unknown, unknown>> {
  const [[, ...names] = [], ...rows] = matrix("PICKCURVE", mulches(picks), days(picks), amounts(picks));
  return new Map(names.map((name, at) => [name, new Map(rows.map(([date, ...sums]) => [date, sums[at]]))]));
}

/** Two tables alike but for rounding; `expected` turns a number of the first into that of the second. */
function expectAlike(
  one: readonly (readonly unknown[])[],
  other: readonly (readonly unknown[])[],
  expected: (label: unknown, value: number) => number = (_label, value) => value,
): void {
  expect(other.length).toBe(one.length);
  for (const [row, cells] of one.entries()) {
    for (const [column, value] of cells.entries()) {
      const now = other[row]?.[column];
      const where = `${cells[0]} ${column}`;
      if (typeof value !== "number") expect(now, where).toEqual(value);
      else near(where, Number(now), expected(cells[0], value), { relative: 1e-9, absolute: 1e-12 });
    }
  }
}

const turned = <Item>(items: readonly Item[]): Item[] => [...items.slice(2), ...items.slice(0, 2)];

describe("in another unit amounts are larger and nothing else", () => {
  const shares: readonly [Id, readonly unknown[], RegExp][] = [
    ["UPDOWN", ["table"], /^Average|^Difference/],
    ["MANYTRIALS", ["table"], /^$/],
  ];
  it.each(shares)("%s", (id, options, inUnits) => {
    fc.assert(
      fc.property(plants, factor, (usual, times) => {
        const tried = usual.map((value, at) => value * (1.1 + 0.05 * at));
        const scaled = (values: readonly number[]) => values.map((value) => value * times);
        expectAlike(
          matrix(id, usual, tried, ...options),
          matrix(id, scaled(usual), scaled(tried), ...options),
          (label, value) => (inUnits.test(String(label)) ? value * times : value),
        );
      }),
      runs,
    );
  });

  it("UNEVENNESS and PERPLANT", () => {
    fc.assert(
      fc.property(plants, factor, (values, times) => {
        const scaled = values.map((value) => value * times);
        const inUnits = /^(Per|Total)/;
        const counts = /^Plants/;
        expectAlike(matrix("PERPLANT", values, "table"), matrix("PERPLANT", scaled, "table"), (label, value) =>
          inUnits.test(String(label)) && !counts.test(String(label)) ? value * times : value,
        );
        near("unevenness", Number(matrix("UNEVENNESS", scaled)[0]?.[0]), Number(matrix("UNEVENNESS", values)[0]?.[0]), {
          relative: 1e-10,
        });
      }),
      runs,
    );
  });

  it("TOTALSONLY of weights", () => {
    fc.assert(
      fc.property(amount, amount, factor, (usual, tried, times) => {
        const table = (scale: number) =>
          matrix("TOTALSONLY", 10 * usual * scale, 8, 10 * tried * scale, 9, "table", null, "weight");
        expectAlike(table(1), table(times), (label, value) =>
          /^Per plant/.test(String(label)) ? value * times : value,
        );
      }),
      runs,
    );
  });

  it("WORTHIT: so many times the amounts at so many times less a unit is the same money", () => {
    fc.assert(
      fc.property(plants, plants, factor, (usual, tried, times) => {
        const money = /^(Worth|Money|For the next|What it says|Break-even change)/;
        const table = (scale: number) => {
          const scaled = (values: readonly number[]) => values.map((value) => value * scale);
          return matrix("WORTHIT", scaled(usual), scaled(tried), 2.5 / scale, 0.4, "table").filter(([label]) =>
            money.test(String(label)),
          );
        };
        expectAlike(table(1), table(times));
      }),
      runs,
    );
  });

  it("TALLYPICKS, PICKCURVE and HALFPICKED", () => {
    fc.assert(
      fc.property(log, factor, (picks, times) => {
        const scaled = picks.map((one) => ({ ...one, amount: one.amount * times }));
        const totals = (of: Log) =>
          tally(of)
            .slice(1)
            .map((row) => row[3]);
        for (const [at, total] of totals(picks).entries())
          near("total", Number(totals(scaled)[at]), Number(total) * times, { relative: 1e-9 });
        expect(halves(scaled)).toEqual(halves(picks));
      }),
      runs,
    );
  });
});

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

describe("usual and new swapped", () => {
  it("UPDOWN: the two ratios are each other's inverse", () => {
    fc.assert(
      fc.property(plants, plants, (usual, tried) => {
        const change = (one: readonly number[], other: readonly number[]) =>
          Number(matrix("UPDOWN", one, other)[0]?.[0]);
        near("1", (1 + change(usual, tried)) * (1 + change(tried, usual)), 1, { absolute: 1e-12 });
      }),
      runs,
    );
  });

  it("TOTALSONLY and MANYTRIALS: range ends are each other's inverse", () => {
    fc.assert(
      fc.property(plants, (usual) => {
        const tried = usual.map((value, at) => value * (0.8 + 0.15 * at));
        const ends = (table: unknown[][]) =>
          ["Change low", "Change high"].map((end) => Number(table.find(([label]) => label === end)?.[1]));
        const pairs = [
          [matrix("MANYTRIALS", usual, tried, "table"), matrix("MANYTRIALS", tried, usual, "table")],
          [matrix("TOTALSONLY", 812, 8, 1190, 9, "table"), matrix("TOTALSONLY", 1190, 9, 812, 8, "table")],
        ] as const;
        for (const [one, other] of pairs) {
          const [[low = 0, high = 0], [otherLow = 0, otherHigh = 0]] = [ends(one), ends(other)];
          near("low × high", (1 + low) * (1 + otherHigh), 1, { absolute: 1e-9 });
          near("high × low", (1 + high) * (1 + otherLow), 1, { absolute: 1e-9 });
        }
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

describe("DRAWLOTS", () => {
  it("gives the plan of a number again, with every treatment once in every bed, whatever the treatments are called", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 6 }),
        fc.integer({ min: 2, max: 9 }),
        fc.integer({ min: 1, max: 9999 }),
        (ways, beds, number) => {
          const names = Array.from({ length: ways }, (_, at) => `Mulch ${at + 1}`);
          const plan = () => matrix("DRAWLOTS", names, beds, number, "table", "one each").slice(1);
          expect(plan()).toEqual(plan());
          for (let bed = 1; bed <= beds; bed += 1) {
            const grown = plan()
              .filter((row) => row[1] === bed)
              .map((row) => String(row[2]));
            expect(grown.toSorted()).toEqual(names);
          }
          const renamed = matrix(
            "DRAWLOTS",
            names.map((name) => name.replace("Mulch", "Way")),
            beds,
            number,
            "table",
            "one each",
          ).slice(1);
          expect(renamed.map((row) => String(row[2]).slice(-1))).toEqual(plan().map((row) => String(row[2]).slice(-1)));
        },
      ),
      runs,
    );
  });
});
