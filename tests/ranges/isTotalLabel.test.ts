import { expect, it } from "vitest";
import { isTotalLabel } from "../../src/ranges/isTotalLabel";

it.each(["Week total", "TOTAL", "sub-total", "Subtotals:", "Sum July", "average", "Mean", "week 27", "Weekly"])(
  "%s is no plant",
  (label) => {
    expect(isTotalLabel(label)).toBe(true);
  },
);

it.each(["B1-2", "Summer squash 3", "Meaning", "Totally red", "Wee K", "", `${"x".repeat(300)} total`])(
  "%s is a plant",
  (label) => {
    expect(isTotalLabel(label)).toBe(false);
  },
);
