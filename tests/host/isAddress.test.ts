import { expect, it } from "vitest";
import { isAddress } from "../../src/host/isAddress";

it.each(["B2", "$B$2:C9", "b2:c9", "B:B", "$A:$XFD", "2:4", "$2:$4"])("%s is an address", (reference) => {
  expect(isAddress(reference)).toBe(true);
});

it.each(["", "B", "new", "Straw", "Straw2", "_A1", "A0", "2", "A1#", "A1:B", "A:2", "A1,B2", "Plants[Grams]", "T!A1"])(
  "%j is none",
  (reference) => {
    expect(isAddress(reference)).toBe(false);
  },
);
