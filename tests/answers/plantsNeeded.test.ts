import { expect, it } from "vitest";
import { plantsNeededFunction } from "../../src/answers/plantsNeeded";
import { found, given } from "../questions/range";

// What each label holds is tested through the worksheet function, in tests/functions.
const call = given({ change: 0.3, unevenness: 0.25 });

it("has METHODS' parameters, show right after the required ones", () => {
  expect(plantsNeededFunction.parameters.map(({ name }) => name)).toEqual([
    "change",
    "unevenness",
    "show",
    "treatments",
    "beds",
    "chance",
    "losses",
    "worthwhile",
  ]);
  for (const argument of Object.keys(plantsNeededFunction.choices)) {
    expect(plantsNeededFunction.parameters.map(({ name }) => name)).toContain(argument);
  }
});

it("each figure has the format it is best shown with", () => {
  const { lines } = plantsNeededFunction.shown(found(plantsNeededFunction.ask(call)), call);
  expect(lines.map(({ format }) => format)).toEqual(["count", "count", "count", "percent", "percent", "percent"]);
});
