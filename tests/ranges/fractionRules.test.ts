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

it.each(Object.keys(ALLOWED) as FractionName[])(
  "FRACTION_RULES lets through what METHODS 4.4 allows as %s",
  (argument) => {
    const near = fc.constantFrom(-1, 0, 0.05, 0.5, 1, 3, 4, 5, 100);
    fc.assert(
      fc.property(fc.oneof(near, fc.double({ min: -2, max: 6, noNaN: true })), (value) => {
        const refused = FRACTION_RULES[argument]({ argument, value, signed: false }) !== null;
        expect(refused).toBe(!ALLOWED[argument](value));
      }),
    );
  },
);
