import { expect, it } from "vitest";
import { upDownFunction } from "../../src/answers/upDown";
import { found, given } from "../questions/range";

// What each label holds is tested through the worksheet function, in tests/functions.
const call = given({ usual: 24, new: 72 });

it("has METHODS' parameters, show right after the required ones", () => {
  expect(upDownFunction.parameters.map(({ name }) => name)).toEqual(["usual", "new", "show", "confidence"]);
  for (const argument of Object.keys(upDownFunction.choices)) {
    expect(upDownFunction.parameters.map(({ name }) => name)).toContain(argument);
  }
});

it("each figure has the format it is best shown with", () => {
  const { lines } = upDownFunction.shown(found(upDownFunction.ask(call)), call);
  expect(lines.map(({ format }) => format)).toEqual([
    "percent",
    "percent",
    "percent",
    "decimal",
    "amount",
    "amount",
    "count",
    "count",
  ]);
});
