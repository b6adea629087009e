import { expect, it } from "vitest";
import { compareTwoFunction } from "../../src/answers/compareTwo";
import { found, given } from "../questions/range";

// What each label holds is tested through the worksheet function, in tests/functions.
const call = given({ usual: [4, 5, 6, 5], new: [7, 8, 9, 8] });

it("has METHODS' parameters, show right after the required ones", () => {
  expect(compareTwoFunction.parameters.map(({ name }) => name)).toEqual([
    "usual",
    "new",
    "show",
    "how",
    "worthwhile",
    "confidence",
    "lost_plants",
  ]);
  for (const argument of Object.keys(compareTwoFunction.choices)) {
    expect(compareTwoFunction.parameters.map(({ name }) => name)).toContain(argument);
  }
});

it("each figure has the format it is best shown with", () => {
  const { lines } = compareTwoFunction.shown(found(compareTwoFunction.ask(call)), call);
  expect(lines.map(({ format }) => format)).toEqual([
    "text",
    ...Array<string>(2).fill("amount"),
    ...Array<string>(4).fill("count"),
    "decimal",
    ...Array<string>(3).fill("amount"),
    ...Array<string>(3).fill("percent"),
    ...Array<string>(5).fill("decimal"),
    ...Array<string>(2).fill("percent"),
    ...Array<string>(3).fill("text"),
  ]);
});
