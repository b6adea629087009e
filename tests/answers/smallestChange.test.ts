import { expect, it } from "vitest";
import { smallestChangeFunction } from "../../src/answers/smallestChange";
import { found, given } from "../questions/range";

// What each label holds is tested through the worksheet function, in tests/functions.
const call = given({ plants_each: 8, unevenness: 0.3 });

it("has METHODS' parameters, show right after the required ones", () => {
  expect(smallestChangeFunction.parameters.map(({ name }) => name)).toEqual([
    "plants_each",
    "unevenness",
    "show",
    "treatments",
    "beds",
    "chance",
    "direction",
  ]);
  for (const argument of Object.keys(smallestChangeFunction.choices)) {
    expect(smallestChangeFunction.parameters.map(({ name }) => name)).toContain(argument);
  }
});

it("each figure has the format it is best shown with", () => {
  const { lines } = smallestChangeFunction.shown(found(smallestChangeFunction.ask(call)), call);
  expect(lines.map(({ format }) => format)).toEqual(["percent"]);
});
