import { expect, it } from "vitest";
import { labelSwap } from "../../src/methods/labelSwap";
import { mostOneSidedFlip, mostOneSidedSplit } from "../../src/methods/mostOneSided";
import { signFlip } from "../../src/methods/signFlip";
import { printed } from "./printed";

const upTo = (from: number, n: number) => Array.from({ length: n }, (_, i) => from + i);

it.each([
  [2, "0.3333"],
  [3, "0.1"],
  [4, "0.02857"],
  [5, "0.007937"],
  [6, "0.002165"],
])("%d plants each, by arithmetic", (n, share) => {
  printed("share", mostOneSidedSplit(n, n), share);
  expect(labelSwap(upTo(1, n), upTo(100, n)).p).toBe(mostOneSidedSplit(n, n));
});

it.each([
  [4, "0.125"],
  [5, "0.0625"],
  [6, "0.03125"],
])("%d pairs, by arithmetic", (pairs, share) => {
  printed("share", mostOneSidedFlip(pairs), share);
  expect(signFlip(upTo(1, pairs)).p).toBe(mostOneSidedFlip(pairs));
});

it("is never above 1", () => {
  expect([mostOneSidedSplit(1, 1), mostOneSidedFlip(1), mostOneSidedSplit(0, 3), mostOneSidedFlip(0)]).toEqual([
    1, 1, 1, 1,
  ]);
});
