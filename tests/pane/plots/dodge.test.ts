import { expect, it } from "vitest";
import { dodge } from "../../../src/pane/plots/dodge";

it("leaves dots alone that do not meet", () => {
  expect(dodge([0, 10, 30], 8, 9)).toEqual([0, 0, 0]);
});

it("puts dots of one place above and below each other, in the order given", () => {
  expect(dodge([5, 5, 5], 8, 9)).toEqual([0, -8, 8]);
});

it("lets dots cover each other rather than leave the row", () => {
  expect(dodge([5, 5, 5, 5], 8, 9)).toEqual([0, -8, 8, 0]);
});

it("does not mind in which order plants stand in the sheet", () => {
  expect(dodge([30, 2, 0], 8, 9)).toEqual([0, -8, 0]);
});
