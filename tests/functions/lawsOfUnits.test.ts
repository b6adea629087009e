import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { near } from "../near";
import { type Id, matrix } from "./call";
import { amount, expectAlike, factor, halves, type Log, log, plants, runs, tally } from "./lawful";

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
