import { expect, it } from "vitest";
import type { Case } from "./experiment";
import { nothing, tallySlice, together } from "./tally";

const coin: Case = {
  about: ["coin"],
  trials: 4000,
  experiment: (source) => (source.below(4) === 0 ? ["heads", "either"] : ["either"]),
};

it("counts what happened, the same for the same name and slice and otherwise for another", () => {
  const slice = { number: 0, trials: 4000 };
  const tally = tallySlice("coin", coin, slice);
  expect(tally.counts.either).toBe(4000);
  // a quarter, give or take four standard errors of 27
  expect(Math.abs((tally.counts.heads ?? 0) - 1000)).toBeLessThan(110);
  expect(tallySlice("coin", coin, slice)).toEqual(tally);
  expect(tallySlice("coin", coin, { ...slice, number: 1 })).not.toEqual(tally);
  expect(tallySlice("other coin", coin, slice)).not.toEqual(tally);
});

it("adds up in whatever order", () => {
  const [one, other] = [0, 1].map((number) => tallySlice("coin", coin, { number, trials: 100 }));
  if (one === undefined || other === undefined) throw new Error("two slices");
  expect(together(one, other)).toEqual(together(other, one));
  expect(together(nothing, one)).toEqual(one);
  expect(together(one, other).trials).toBe(200);
});
