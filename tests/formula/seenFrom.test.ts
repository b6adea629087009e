import { expect, it } from "vitest";
import { seenFrom } from "../../src/formula/seenFrom";

it("leaves a formula alone on its own sheet", () => {
  expect(seenFrom("=FAIRBED.UPDOWN(B2:B9,C2:C9)", "Mulch", "Mulch")).toBe("=FAIRBED.UPDOWN(B2:B9,C2:C9)");
});

it.each([
  ["=FAIRBED.UPDOWN(B2:B9,$C$2)", "Mulch", "=FAIRBED.UPDOWN(Mulch!B2:B9,Mulch!$C$2)"],
  ["=FAIRBED.PERPLANT(B:B)", "This year's", "=FAIRBED.PERPLANT('This year''s'!B:B)"],
  ['=FAIRBED.UPDOWN(Nets!B2,straw,"B2",10%)', "Mulch", '=FAIRBED.UPDOWN(Nets!B2,straw,"B2",10%)'],
  ["=FAIRBED.PERPLANT(Plants[Grams])", "Mulch", "=FAIRBED.PERPLANT(Plants[Grams])"],
])("%s written on %s becomes %s", (formula, home, seen) => {
  expect(seenFrom(formula, home, "Elsewhere")).toBe(seen);
});
