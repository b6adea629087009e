import fc from "fast-check";
import { expect, it } from "vitest";
import { FRACTION_RULES, type FractionName } from "../../src/ranges/fractionRules";

/** The open or half-open spans of METHODS 4.4, written down a second time as plain conditions. */
const ALLOWED: Readonly<Record<FractionName, (value: number) => boolean>> = {
  worthwhile: (value) => value !== 0 && value > -1 && value < 1,
  change: (value) => value > -1 && value < 5 && !(value >= 3 && Number.isInteger(value)),
  unevenness: (value) => value > 0 && value < 3,
  chance: (value) => value > 0.05 && value < 1,
  losses: (value) => value >= 0 && value < 1,
  confidence: (value) => value >= 0.5 && value < 1,
};

/** The same spans for a percent sign typed with it: 300 % is no slip for 3 points. */
const ALLOWED_SIGNED = { ...ALLOWED, change: (value: number) => value > -1 && value < 5 };

const NAMES = Object.keys(ALLOWED) as FractionName[];
const values = fc.oneof(
  fc.constantFrom(-1, 0, 0.05, 0.5, 1, 3, 4, 5, 100),
  fc.double({ min: -2, max: 6, noNaN: true }),
);

it.each(NAMES)("FRACTION_RULES lets through what METHODS 4.4 allows as %s", (argument) => {
  fc.assert(
    fc.property(values, fc.boolean(), (value, signed) => {
      const refused = FRACTION_RULES[argument]({ argument, value, signed }) !== null;
      expect(refused).toBe(!(signed ? ALLOWED_SIGNED : ALLOWED)[argument](value));
    }),
  );
});

it.each<[FractionName, number, boolean, string]>([
  ["worthwhile", 0, false, "zero-worthwhile"],
  ["worthwhile", 10, false, "percent-as-points"],
  ["worthwhile", 1, true, "percent-outside"],
  ["change", -1, false, "fall-too-big"],
  ["change", -1.2, true, "fall-too-big"],
  ["change", -30, false, "percent-as-points"],
  ["change", 3, false, "percent-as-points"],
  ["change", 5, true, "percent-outside"],
  ["unevenness", 0, true, "zero-unevenness"],
  ["unevenness", 25, false, "percent-as-points"],
  ["chance", 1, false, "percent-outside"],
  ["chance", 80, false, "percent-as-points"],
  ["losses", -0.1, false, "percent-outside"],
  ["losses", 10, false, "percent-as-points"],
  ["confidence", 1, false, "percent-outside"],
  ["confidence", 95, false, "percent-as-points"],
  ["confidence", 0.4, true, "percent-outside"],
])("as %s, %d with a percent sign %s is refused as %s", (argument, value, signed, problem) => {
  expect(FRACTION_RULES[argument]({ argument, value, signed })).toMatchObject({ problem });
});
