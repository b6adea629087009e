import { expect, test } from "vitest";
import { dayText } from "../../src/words/dayText";

test("dayText writes a day so that it sorts and can be read again; without a year where none is known", () => {
  // R: as.integer(as.Date("2023-07-05")) + 25569
  expect(dayText(45112, true)).toBe("2023-07-05");
  expect(dayText(45112, false)).toBe("5 July");
});
