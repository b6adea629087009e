import { expect, it } from "vitest";
import { manyTrials } from "../../src/questions/manyTrials";
import { tellManyTrials } from "../../src/words/manyTrials";
import { found, given } from "../questions/range";

/** The usual is 100 in each trial, so that the new is a percent of it. */
const told = (...new_averages: readonly number[]) => {
  const { finding, say } = tellManyTrials(
    found(manyTrials(given({ usual_averages: new_averages.map(() => 100), new_averages }))),
  );
  return { finding: finding(), say: say() };
};

it("says that the trials came out close where the range is less than 10 % on either side", () => {
  // Logs 0.0198, −0.0202 and 0: the range is about −5 % to +5 %.
  expect(told(102, 98, 100).finding).toContain("They came out close: less than 10 % apart, either way.");
});

it("says that the trials are level on average where their changes cancel out", () => {
  // 1.25 times 0.8 is 1.
  expect(told(125, 80).finding).toContain("The new was ahead in 1 of 2 trials, but level on average.");
});

it("says that one trial gave as much where its averages are equal", () => {
  expect(told(100).say).toBe("The new gave as much in one trial. One is too few to say more.");
});

it("says that nothing is settled also where only a big loss can be ruled out", () => {
  // Logs 0.0953, 0.0198, 0.0770 and −0.0101: 3.182 (t table, 3 df) standard errors reach from about −3 % to +13 %.
  expect(told(110, 102, 108, 99).say).toBe("The new was ahead in 3 of 4 trials, by 5 % on average. It is not settled.");
});
