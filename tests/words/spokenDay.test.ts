import { expect, it } from "vitest";
import { spokenDay } from "../../src/words/spokenDay";

it("spokenDay names the month, and the year where it is known", () => {
  expect(spokenDay({ year: 2023, month: 7, day: 5 })).toBe("5 July 2023");
  expect(spokenDay({ year: null, month: 12, day: 31 })).toBe("31 December");
});
