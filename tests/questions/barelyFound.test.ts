import { expect, it } from "vitest";
import type { Known } from "../../src/nouns/known";
import type { Verdict } from "../../src/nouns/verdict";
import { isBarelyFound, isWide } from "../../src/questions/barelyFound";

const none = { absent: "no-upper-limit" } as const;

it.each<readonly [Verdict, range: readonly [low: Known, high: Known], barely: boolean]>([
  ["up-unclear", [0.019, 0.7], true],
  ["up-unclear", [0.021, 0.7], false],
  ["up-unclear", [0.019, none], true],
  ["down-unclear", [-0.5, -0.019], true],
  ["down-unclear", [-0.5, -0.021], false],
  ["leaning-up", [0.019, 0.7], false],
  ["open-up", [-0.01, 0.7], false],
  ["few", [0.01, 0.7], false],
])("%s with the range %j: %s", (verdict, [low, high], barely) => {
  const change = verdict.startsWith("down") ? -0.3 : 0.3;
  expect(isBarelyFound({ verdict, change, changeRange: { low, high } })).toBe(barely);
});

it("a range is wide above 100 points, and without an end", () => {
  expect(isWide({ low: 0.1, high: 1.11 })).toBe(true);
  expect(isWide({ low: 0.1, high: 1.09 })).toBe(false);
  expect(isWide({ low: 0.1, high: none })).toBe(true);
  expect(isWide({ low: { absent: "no-lower-limit" }, high: 0.2 })).toBe(true);
});

it("where no change could be told, none was barely found", () => {
  const why = { absent: "all-equal" } as const;
  expect(isBarelyFound({ verdict: "none", change: why, changeRange: { low: why, high: why } })).toBe(false);
});

it("a range of 100 points to the digit is not wide", () => {
  expect(isWide({ low: -0.5, high: 0.5 })).toBe(false);
});
