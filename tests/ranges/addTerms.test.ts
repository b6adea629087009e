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

it("addTerms takes units of all or of the last alone", () => {
  expect(addTerms([term("1"), term("2", { unit: "g" }), term("3", { unit: "g" })])).toBeNull();
});

it("addTerms says of a compound with a comma in one part that more than digits was read", () => {
  const small = term("4", { unit: "oz", compound: true });
  expect(addTerms([term("1,5", { unit: "lb" }), small])).toMatchObject({ value: 1.75, unit: "lb", marked: true });
});

it.each([
  ["kg", 1.25, null],
  ["lb", 1.25, null],
  ["l", 1.25, null],
  ["m", 1.25, null],
  ["g", 1250, 1.25],
  ["oz", 1250, 1.25],
  ["ml", 1250, 1.25],
  ["cm", 1250, 1.25],
] as const)("addTerms reads 1,250 %s as %d (METHODS 3)", (unit, value, otherwise) => {
  expect(addTerms([term("1,250", { unit })])).toMatchObject({ value, unit, doubtful: otherwise !== null, otherwise });
});

it("addTerms gives null for a sum that is not finite", () => {
  expect(addTerms([term("9".repeat(400))])).toBeNull();
});
