import { expect, it } from "vitest";
import { allCases } from "./allCases";
import { isBroken, shareSeen } from "./share";
import { tallySlice } from "./tally";

// The last case of every block; what takes longer to ask with fewer trials.
const lasts = [...new Map(allCases.map((one) => [one.block, one])).values()];

it.each(lasts)("$name: a small run breaks no promise", ({ name, block, case: one }) => {
  const tally = tallySlice(name, one, { number: 0, trials: one.trials < 5000 ? 16 : 200 });
  const broken = block.shares.filter((share) => isBroken(share, shareSeen(share, tally)));
  expect(broken.map(({ heading }) => heading)).toEqual([]);
  expect(Object.keys(tally.counts).length).toBeGreaterThan(0);
});
