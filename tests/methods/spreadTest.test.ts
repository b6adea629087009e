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

it("spread that grows with the yield is alike", () => {
  const plants = [8, 10, 12, 11];
  const twice = plants.map((value) => 2 * value);
  near("as shares", spreadTest(summary(plants), summary(twice)), 1, { relative: 1e-12 });
});

it.each([
  { name: "both below nothing", other: [-34, -30, -26, -28], one: [-42, -40, -38, -39], pValue: 0.28475697986529408 },
  { name: "one below nothing", one: [8, 10, 12, 11], other: [-3, -1, 2, 0, -9], pValue: 0.17036110081531597 },
  { name: "one around nothing", one: [8, 10, 12, 11], other: [-4, -1, 1, 4], pValue: 0.29432912576553077 },
])("values without an average above 0 are taken as they are (R's var.test(one, other)): $name", (known) => {
  const [one, other] = [summary(known.one), summary(known.other)];
  near("p", spreadTest(one, other), known.pValue);
  near("p, the other way", spreadTest(other, one), known.pValue);
});

it("one group without variation is unlike the other for certain; two say nothing", () => {
  expect(spreadTest(summary([3, 3, 3]), summary([3, 4, 5]))).toBe(0);
  expect(spreadTest(summary([3, 3, 3]), summary([4, 4, 4]))).toBeNaN();
});
