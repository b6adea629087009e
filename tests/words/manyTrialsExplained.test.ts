import { expect, it } from "vitest";
import { manyTrials } from "../../src/questions/manyTrials";
import { explainManyTrials } from "../../src/words/manyTrialsExplained";
import { found, given } from "../questions/range";

const oneMore = ["Add one more trial: each makes the range narrower."];

/** The usual is 100 in each trial, so that the new is a percent of it. */
const next = (...new_averages: readonly number[]) =>
  explainManyTrials(found(manyTrials(given({ usual_averages: new_averages.map(() => 100), new_averages })))).next;

it("asks for one more trial while they are few or not settled", () => {
  expect(next(150, 140)).toEqual(oneMore);
  expect(next(150, 90, 120)).toEqual(oneMore);
  // Logs 0.140, 0.095 and 0.049: the range is about −2 % to +23 %, so there may be a gain worth having.
  expect(next(115, 110, 105)).toEqual(oneMore);
});

it("says what to do once three trials settle it", () => {
  // Logs 0.405, 0.336 and 0.372: the range is about +33 % to +58 %.
  expect(next(150, 140, 145)).toEqual([
    "If the new way is cheap and harmless, use it on part and compare side by side once more.",
    "If it costs money or labour, try it again. Switch if WORTHIT's low end is above 0, or a second season agrees.",
  ]);
});

it("bases no change on trials that all changed by the very same share", () => {
  expect(next(125, 125, 125)).toEqual(["No change on this evidence."]);
});
