import { describe, expect, it } from "vitest";
import type { AgainstUsual } from "../../src/nouns/findings/manyTreatments";
import { basisOf } from "../../src/questions/jointComparison";
import type { ManyGroups } from "../../src/questions/manyGroups";
import { nearEnd } from "../methods/nearEnd";
import { errorOfTukeyInR } from "../methods/tukeyInR";
import { near } from "../near";
import inBeds from "../reference/manyBeds.json";
import separate from "../reference/manyOneWay.json";
import { type Asked, columnsOf, joint, trialOf } from "./trialOf";

const compared = (groups: ManyGroups, asked: Asked, treatment: number): AgainstUsual =>
  joint(groups, asked).againstUsual(treatment) ?? expect.fail(`nothing found for ${treatment}`);
const figure = (known: AgainstUsual["pValue"]) => (typeof known === "number" ? known : Number.NaN);
const named = <Case extends { readonly name: string }>(cases: readonly Case[], names: readonly string[]) =>
  cases.filter(({ name }) => names.includes(name));
const LEVELS = [0.001, 0.01, 0.05, 0.15, 0.5];

describe("separate plants in R (tests/reference/manyOneWay.R)", () => {
  const cases = named(separate.cases, ["pain relief, five each", "blood counts", "four unequal groups", "PlantGrowth"]);

  it.each(cases)("$name, against the usual: Dunnett", ({ groups, dunnett }) => {
    const comparison = joint(trialOf(columnsOf(groups)), { how: "against usual", usual: 0 });
    for (const [at, R] of dunnett.entries()) {
      const { pValue, changeRange } = comparison.againstUsual(at + 1) ?? expect.fail("nothing found");
      near(`p ${at}`, figure(pValue), R.p, { absolute: 1e-9 });
      nearEnd(`low ${at}`, changeRange.low, R.percentLow, { relative: 1e-8, absolute: 1e-9 });
      nearEnd(`high ${at}`, changeRange.high, R.percentHigh, { relative: 1e-8, absolute: 1e-9 });
      expect(LEVELS.map((level) => comparison.isBelow(at + 1, level))).toEqual(LEVELS.map((level) => R.p < level));
    }
  });

  it.each(cases)("$name, all pairs: Tukey", ({ groups, tukey, df }) => {
    const comparison = joint(trialOf(columnsOf(groups)), { how: "all pairs", usual: 0 });
    const error = errorOfTukeyInR(df);
    for (const { one, other, difference, low, high, p } of tukey) {
      const pair = comparison.pair({ usual: one, tried: other });
      const reach = { absolute: error.critical * (high - low) };
      near(`difference ${one}-${other}`, figure(pair.difference), difference, { relative: 1e-9 });
      nearEnd(`low ${one}-${other}`, pair.differenceRange.low, low, reach);
      nearEnd(`high ${one}-${other}`, pair.differenceRange.high, high, reach);
      near(`p ${one}-${other}`, figure(pair.pValue), p, { absolute: error.p });
      if (one > 0) continue;
      expect(comparison.againstUsual(other)).toEqual(pair);
      expect(LEVELS.map((level) => comparison.isBelow(other, level))).toEqual(LEVELS.map((level) => p < level));
    }
  });

  it.each(cases)("$name, own unevenness: Games and Howell", ({ groups, tukey }) => {
    const comparison = joint(trialOf(columnsOf(groups)), { how: "own unevenness", usual: 0 });
    expect(comparison.test()).toBeNull();
    for (const { one, other, difference, own } of tukey) {
      const pair = comparison.pair({ usual: one, tried: other });
      const error = errorOfTukeyInR(own.df);
      const reach = { absolute: error.critical * (own.high - own.low) };
      const percent = { absolute: 4 * error.critical, relative: 4 * error.critical };
      near(`difference ${one}-${other}`, figure(pair.difference), difference, { relative: 1e-9 });
      nearEnd(`low ${one}-${other}`, pair.differenceRange.low, own.low, reach);
      nearEnd(`high ${one}-${other}`, pair.differenceRange.high, own.high, reach);
      nearEnd(`percent low ${one}-${other}`, pair.changeRange.low, own.percentLow, percent);
      nearEnd(`percent high ${one}-${other}`, pair.changeRange.high, own.percentHigh, percent);
      near(`p ${one}-${other}`, figure(pair.pValue), own.p, { absolute: error.p });
      if (one > 0) continue;
      expect(comparison.againstUsual(other)).toEqual(pair);
      expect(LEVELS.map((level) => comparison.isBelow(other, level))).toEqual(LEVELS.map((level) => own.p < level));
    }
  });
});

it.each(named(inBeds.cases, ["warpbreaks without five", "npk without four plots"]))(
  "$name: beds are allowed for, two as well as six (R's lm(); tests/reference/manyBeds.R)",
  ({ dunnett, means, ...columns }) => {
    const comparison = joint(trialOf(columns), { how: "against usual", usual: 0 });
    for (const [at, mean] of means.entries()) near(`average ${at}`, comparison.model.means[at] ?? 0, mean);
    for (const [at, { p }] of dunnett.entries()) {
      near(`p ${at}`, figure(comparison.againstUsual(at + 1)?.pValue ?? Number.NaN), p, { absolute: 1e-9 });
    }
  },
);

it("one bed for all is no bed: the same as separate plants, also in unequal numbers", () => {
  const { groups, dunnett } = named(separate.cases, ["four unequal groups"])[0] ?? expect.fail("no case");
  const columns = columnsOf(groups);
  const alone = compared(
    trialOf({ ...columns, bed: columns.value.map(() => 0) }),
    { how: "against usual", usual: 0 },
    2,
  );
  near("p", figure(alone.pValue), dunnett[1]?.p ?? 0, { absolute: 1e-9 });
});

describe("which comparisons are shown", () => {
  const groups = trialOf(columnsOf([[4, 5, 6], [5, 7, 6], [], [9, 8, 9]]));

  it("with a usual, each of the others with it, the treatment before it too", () => {
    const { treatments, duos, againstUsual, isBelow } = joint(groups, { how: "against usual", usual: 1 });
    expect(treatments).toEqual([0, 1, 3]);
    expect(duos).toEqual([
      { usual: 1, tried: 0 },
      { usual: 1, tried: 2 },
    ]);
    // averages 5, 6 and 26/3
    expect(againstUsual(0)).toMatchObject({ difference: -1 });
    near("difference", figure(againstUsual(3)?.difference ?? Number.NaN), 8 / 3);
    expect([againstUsual(2), isBelow(2, 0.05)]).toEqual([null, null]);
  });

  it.each(["all pairs", "own unevenness"] as const)("without a usual, %s: every pair", (how) => {
    const { duos, againstUsual, isBelow } = joint(groups, { how, usual: null });
    expect(duos).toEqual([
      { usual: 0, tried: 1 },
      { usual: 0, tried: 2 },
      { usual: 1, tried: 2 },
    ]);
    expect([0, 1, 2, 3].map((at) => againstUsual(at))).toEqual([null, null, null, null]);
    expect([0, 1, 2, 3].map((at) => isBelow(at, 0.05))).toEqual([null, null, null, null]);
  });
});

describe("what a comparison rests on", () => {
  // bed 1 holds all three, bed 2 the first two, bed 3 the first and the last, bed 4 the first twice
  const plants = { value: [1, 2, 3, 4, 5, 6, 7, 8, 9], treatment: [0, 1, 2, 0, 1, 0, 2, 0, 0] };
  const bed = [0, 0, 0, 1, 1, 2, 2, 3, 3];

  it.each([
    [{ usual: 0, tried: 1 }, { usual: 5, tried: 2 }, 2],
    [{ usual: 0, tried: 2 }, { usual: 5, tried: 2 }, 2],
    [{ usual: 1, tried: 2 }, { usual: 2, tried: 2 }, 1],
  ])("%j: plants %j, or the %d beds that hold both", (duo, numbers, shared) => {
    expect(basisOf(trialOf(plants), [0, 1, 2], duo)).toEqual(numbers);
    expect(basisOf(trialOf({ ...plants, bed }), [0, 1, 2], duo)).toEqual({ usual: shared, tried: shared });
  });

  it("two treatments in beds are pairs", () => {
    const two = trialOf({ value: [1, 2, 3, 4, 5], treatment: [0, 1, 0, 1, 0], bed: [0, 0, 1, 1, 2] });
    expect(basisOf(two, [0, 1], { usual: 0, tried: 1 })).toEqual({ pairs: 2 });
  });
});
