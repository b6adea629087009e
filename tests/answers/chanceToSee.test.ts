import { expect, it } from "vitest";
import { chanceToSeeFunction } from "../../src/answers/chanceToSee";
import { found, given } from "../questions/range";

// What each label holds is tested through the worksheet function, in tests/functions.
const call = given({ change: 0.5, plants_each: 6, unevenness: 0.3 });

it("has METHODS' parameters, show right after the required ones", () => {
  expect(chanceToSeeFunction.parameters.map(({ name }) => name)).toEqual([
    "change",
    "plants_each",
    "unevenness",
    "show",
    "treatments",
    "beds",
    "worthwhile",
  ]);
  for (const argument of Object.keys(chanceToSeeFunction.choices)) {
    expect(chanceToSeeFunction.parameters.map(({ name }) => name)).toContain(argument);
  }
});

it("each figure has the format it is best shown with", () => {
  const { lines } = chanceToSeeFunction.shown(found(chanceToSeeFunction.ask(call)), call);
  expect(lines.map(({ format }) => format)).toEqual(["percent", "percent"]);
});
