import { expect, it } from "vitest";
import { setOut } from "../../src/methods/setOut";

it.each([
  [23, 0.1, null, 26],
  [9, 0.1, null, 10],
  [18, 0.1, null, 20],
  // 21/0.7 is a little above 30 in doubles
  [21, 0.3, null, 30],
  [5, 0, null, 5],
  [7, 0.5, null, 14],
  [23, 0.1, 4, 28],
  [5, 0, 4, 8],
  [23, 0.1, "one each", 26],
] as const)("%d that must live, %d lost, beds %s: set out %d", (needed, losses, beds, plants) => {
  expect(setOut(needed, losses, beds)).toBe(plants);
});
