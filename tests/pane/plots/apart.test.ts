import { expect, it } from "vitest";
import { apart } from "../../../src/pane/plots/apart";

it("places far enough apart stay; others are moved in their order", () => {
  expect(apart([50, 10, 30], 14, 100)).toEqual([50, 10, 30]);
  expect(apart([20, 12, 10], 14, 100)).toEqual([38, 24, 10]);
});

it("none goes beyond the last while there is room", () => {
  expect(apart([98, 99, 100], 14, 100)).toEqual([72, 86, 100]);
});
