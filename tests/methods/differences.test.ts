import { expect, it } from "vitest";
import { differences } from "../../src/methods/differences";

it.each([
  ["a usual plant without its new one", [1, 2], [1]],
  ["a new plant without its usual one", [1], [1, 2]],
  ["no usual plant at all", [], [1]],
])("%s is a programmer's mistake and throws", (_what, usual, tried) => {
  expect(() => differences(usual, tried)).toThrow(
    new RangeError(`${usual.length} usual plants for ${tried.length} new ones`),
  );
});

it("is new − usual, pair by pair in the order of the pairs, losses below 0", () => {
  expect(differences([5, 2, 3], [1, 2, 10])).toEqual([-4, 0, 7]);
});

it("no pairs have no differences", () => {
  expect(differences([], [])).toEqual([]);
});
