import { expect, it } from "vitest";
import { addTerms } from "../../src/ranges/addTerms";
import type { AmountTerm } from "../../src/ranges/amountTerm";

const term = (digits: string, changes: Partial<AmountTerm> = {}): AmountTerm => ({
  digits,
  fraction: 0,
  negative: false,
  unit: null,
  compound: false,
  end: 0,
  ...changes,
});

it("addTerms gives the sum in the first unit", () => {
  expect(addTerms([term("1", { unit: "kg" }), term("250", { unit: "g" })])).toMatchObject({ value: 1.25, unit: "kg" });
});

it("addTerms lets the last unit hold for all, but not the first", () => {
  expect(addTerms([term("200"), term("310", { unit: "g" })])).toMatchObject({ value: 510, unit: "g" });
  expect(addTerms([term("200", { unit: "g" }), term("310")])).toBeNull();
});

it("addTerms wants a smaller unit in the smaller part of a compound", () => {
  const small = term("4", { unit: "oz", compound: true });
  expect(addTerms([term("1", { unit: "lb" }), small])).toMatchObject({ value: 1.25, unit: "lb", marked: false });
  expect(addTerms([term("1", { unit: "oz" }), small])).toBeNull();
  expect(addTerms([term("1", { unit: "m" }), small])).toBeNull();
});

it("addTerms gives null for a sum that is not finite", () => {
  expect(addTerms([term("9".repeat(400))])).toBeNull();
});
