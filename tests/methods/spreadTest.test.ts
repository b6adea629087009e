import { expect, it } from "vitest";
import { spreadTest } from "../../src/methods/spreadTest";
import { summary } from "../../src/numerics/moments";
import { near } from "../near";
import reference from "../reference/spreadTest.json";
import { trialOf } from "./trialOf";

it.each(reference.cases)("agrees with R's var.test() of shares: $trial", ({ trial, pValue }) => {
  const { usual, tried } = trialOf(trial);
  near(trial, spreadTest(summary(usual), summary(tried)), pValue, { relative: 1e-9 });
  near(`${trial}, the other way`, spreadTest(summary(tried), summary(usual)), pValue, { relative: 1e-9 });
});

it("spread that grows with the yield is alike, and values around nothing are taken as they are", () => {
  const plants = [8, 10, 12, 11];
  const twice = plants.map((value) => 2 * value);
  near("as shares", spreadTest(summary(plants), summary(twice)), 1, { relative: 1e-12 });
  const around = (values: readonly number[]) => summary(values.map((value) => value - 50));
  expect(spreadTest(around(plants), around(twice))).toBeLessThan(0.5);
});

it("one group without variation is unlike the other for certain; two say nothing", () => {
  expect(spreadTest(summary([3, 3, 3]), summary([3, 4, 5]))).toBe(0);
  expect(spreadTest(summary([3, 3, 3]), summary([4, 4, 4]))).toBeNaN();
});
