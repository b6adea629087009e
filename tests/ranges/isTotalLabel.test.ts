import { expect, it } from "vitest";
import { isTotalLabel } from "../../src/ranges/isTotalLabel";

it.each([
  "Week total",
  "TOTAL",
  "sub-total",
  "Subtotal",
  "Subtotals:",
  "Sum July",
  "average",
  "Mean",
  "week 27",
  "Weekly",
])("%s is no plant", (label) => {
  expect(isTotalLabel(label)).toBe(true);
});

it("a total may stand at the end of two hundred characters, not further on", () => {
  expect(isTotalLabel("total".padStart(200))).toBe(true);
  expect(isTotalLabel("total".padStart(201))).toBe(false);
});

it.each(["B1-2", "Summer squash 3", "Meaning", "Totally red", "Wee K", "", `${"x".repeat(300)} total`])(
  "%s is a plant",
  (label) => {
    expect(isTotalLabel(label)).toBe(false);
  },
);
