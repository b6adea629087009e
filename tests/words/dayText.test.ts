import { expect, it } from "vitest";
import { dayText } from "../../src/words/dayText";

it("dayText names the month, and the year where it is known", () => {
  expect(dayText({ year: 2023, month: 7, day: 5 })).toBe("5 July 2023");
  expect(dayText({ year: null, month: 12, day: 31 })).toBe("31 December");
});
