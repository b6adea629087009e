import { expect, it } from "vitest";
import { littleUsual } from "../../src/questions/littleUsual";

it.each([
  [[0, 4, 0, 5], null, ["little"]],
  [[0, 4, 6, 5], null, []],
  [[0, 0], 0.1, ["little"]],
  [[4, 5, 6], 1.5, ["unsteady"]],
  [[4, 5, 6], 1.49, []],
  [[-2, 2, 1, -1], null, ["little"]],
  [[], null, []],
])("%j with g %s: %s", (usual, g, little) => {
  expect(littleUsual(usual, g).map((caution) => "because" in caution && caution.because)).toEqual(little);
});
