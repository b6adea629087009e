import { expect, it } from "vitest";
import { givenDates } from "../../src/questions/givenDates";
import { block } from "../ranges/column";

it("dates are left out when the argument is, or when one empty cell stands in its place", () => {
  expect(givenDates(undefined)).toBeNull();
  expect(givenDates(null)).toBeNull();
  expect(givenDates(block([[null]]))).toBeNull();
  expect(givenDates(block([[" "]]))).toBeNull();
});

it.each([
  ["one day", [[45_108]]],
  ["a column that starts with an empty cell", [[null], [45_108]]],
  ["a row that starts with an empty cell", [[null, 45_108]]],
  ["a row of days", [[45_107, 45_108]]],
  ["two empty cells", [[null], [null]]],
])("%s: dates as given", (_, cells) => {
  const dates = block(cells);
  expect(givenDates(dates)).toBe(dates);
});
