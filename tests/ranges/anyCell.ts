import fc from "fast-check";
import type { Cell } from "../../src/nouns/cell";

const NOTES = [
  "lost",
  "dead (slugs)",
  "-",
  "none",
  "n/a",
  "1 lb 4 oz",
  "0,726 kg",
  "506*",
  "1,250",
  "2+1",
  "177 g",
  "Straw (g)",
  " ",
];

/** Any cell a sheet may hold, notes of growers among them; numbers of any size, also not finite. */
export const anyCell: fc.Arbitrary<Cell> = fc.oneof(
  fc.double(),
  fc.integer({ min: -5, max: 60_000 }),
  fc.string(),
  fc.constantFrom(...NOTES),
  fc.boolean(),
  fc.constant(null),
  fc.constant({ error: "#N/A" }),
);
