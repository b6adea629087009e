import { expect, it } from "vitest";
import { isDateSerial } from "../../src/ranges/isDateSerial";

it.each([
  [35_999.9, false],
  [36_000, true],
  [45_112.5, true],
  [55_000, true],
  [55_000.1, false],
  [-45_112, false],
  [Number.NaN, false],
])("%d: %s", (number, may) => {
  expect(isDateSerial(number)).toBe(may);
});
