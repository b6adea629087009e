import fc from "fast-check";
import { describe, it } from "vitest";
import { near } from "../near";
import { matrix } from "./call";
import { plants, runs } from "./lawful";

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
