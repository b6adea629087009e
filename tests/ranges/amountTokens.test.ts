import { expect, it } from "vitest";
import { amountTokens } from "../../src/ranges/amountTokens";

it("amountTokens takes a text apart into numbers, fractions, words and signs", () => {
  const tokens = amountTokens("~2 ½ lb. 1,250*")?.map(({ token, text }) => [token, text]);
  expect(tokens).toEqual([
    ["sign", "~"],
    ["number", "2"],
    ["fraction", "½"],
    ["word", "lb."],
    ["number", "1,250"],
    ["sign", "*"],
  ]);
});

it("amountTokens notes which pieces a space stands before", () => {
  expect(amountTokens(" - 5 -5")?.map(({ spaced }) => spaced)).toEqual([false, true, true, false]);
});

it("amountTokens takes an apostrophe for a thousands mark only before three digits", () => {
  expect(amountTokens("1'250")?.length).toBe(1);
  expect(amountTokens("5'4")?.length).toBe(3);
  expect(amountTokens("5'4000")?.length).toBe(3);
});

it("amountTokens gives up on a text too long for an amount", () => {
  expect(amountTokens("1".repeat(200))?.length).toBe(1);
  expect(amountTokens("1".repeat(201))).toBeNull();
  expect(amountTokens(`${" ".repeat(500)}1`)?.length).toBe(1);
});
