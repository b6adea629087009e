import { expect, it } from "vitest";
import { bothNumbers } from "../../src/ranges/bothNumbers";

it.each([
  ["1,250", [1250, 1.25]],
  ["1,250+1", [1251, 2.25]],
  ["506", [506, 506]],
  ["slugs", [0, 0]],
])("%s may be either of %j", (text, numbers) => {
  expect(bothNumbers(text)).toEqual(numbers);
});
