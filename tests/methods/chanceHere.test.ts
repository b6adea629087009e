import { expect, it } from "vitest";
import { chanceHere } from "../../src/methods/chanceHere";
import { near } from "../near";
import reference from "../reference/onePiece.json";

const { standardError, df, chance } = reference.cases;

it.each(chance)("a true difference of $difference at $confidence: R's non-central t", (known) => {
  const { difference, confidence } = known;
  near("chance", chanceHere(difference, { standardError, df, confidence }), known.chance, { relative: 1e-9 });
});

it("is the same for a gain and a loss, and the false alarms for no difference", () => {
  const trial = { standardError, df, confidence: 0.95 };
  expect(chanceHere(-1, trial)).toBe(chanceHere(1, trial));
  near("no difference", chanceHere(0, trial), 0.05);
});
