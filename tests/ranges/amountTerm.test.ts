import { expect, it } from "vitest";
import { readTerm } from "../../src/ranges/amountTerm";
import { amountTokens } from "../../src/ranges/amountTokens";

const term = (text: string) => readTerm(amountTokens(text) ?? [], 0);

it("readTerm takes digits, fraction and unit together", () => {
  const facts = { digits: "2", fraction: 0.5, negative: false, unit: "lb", compound: false };
  expect(term("2½ lb")).toEqual({ ...facts, end: 3 });
  expect(term("2 1/2 lb")).toEqual({ ...facts, end: 5 });
  expect(term("2 8/16 lb")).toEqual({ ...facts, end: 5 });
});

it("readTerm takes a minus sign only when it stands close by", () => {
  expect(term("-5")).toMatchObject({ negative: true, digits: "5", end: 2 });
  expect(term("- 5")).toBeNull();
});

it.each(["1/2", "½/2", "lb", "+", ""])("readTerm finds no whole term in %j", (text) => {
  const found = term(text);
  expect(found === null || found.end < (amountTokens(text)?.length ?? 0)).toBe(true);
});

it.each(["2 3/2", "2 1/7", "2 0/4", "21/2", "2.5 1/2", "2 4/4"])("readTerm sees no fraction in %s", (text) => {
  expect(term(text)).toMatchObject({ fraction: 0, end: 1 });
});
