import { expect, it } from "vitest";
import { drawLotsFunction } from "../../src/answers/drawLots";
import { found, given } from "../questions/range";

it("has METHODS' parameters; choices belong to parameters", () => {
  expect(drawLotsFunction.parameters.map(({ name }) => name)).toEqual([
    "treatments",
    "plants_each",
    "draw_number",
    "show",
    "beds",
  ]);
  for (const argument of Object.keys(drawLotsFunction.choices)) {
    expect(drawLotsFunction.parameters.map(({ name }) => name)).toContain(argument);
  }
});

it("the answer is the whole table, and a sentence while there is no number", () => {
  const lots = { treatments: ["Bare", "Straw"], plants_each: 2 };
  const [drawn, undrawn] = [given({ ...lots, draw_number: 5 }), given(lots)];
  expect(drawLotsFunction.shown(found(drawLotsFunction.ask(drawn)), drawn).answer).toBeNull();
  expect(drawLotsFunction.shown(found(drawLotsFunction.ask(undrawn)), undrawn).answer?.()).toMatch(/number/);
});
