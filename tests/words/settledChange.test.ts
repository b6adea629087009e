import { expect, it } from "vitest";
import { settledChange } from "../../src/words/settledChange";

it.each([
  [0.44, "up-enough", "44 % more"],
  [-0.14, "down-unclear", "14 % less"],
  [0.0004, "up-small", "hardly more"],
  [-0.0004, "down-enough", "hardly less"],
] as const)("a change of %d, judged %s, is told as “%s”", (change, verdict, words) => {
  expect(settledChange({ change, verdict })).toBe(words);
});
