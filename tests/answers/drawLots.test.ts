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

it("the answer is the table", () => {
  const call = given({ treatments: ["Bare", "Straw"], plants_each: 2, draw_number: 5 });
  const { answer, columns } = drawLotsFunction.shown(found(drawLotsFunction.ask(call)), call);
  const table = columns?.();
  expect(answer()).toEqual([table?.header, ...(table?.rows ?? [])]);
});
