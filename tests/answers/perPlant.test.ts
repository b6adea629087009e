import { expect, it } from "vitest";
import { perPlantFunction } from "../../src/answers/perPlant";
import { found, given } from "../questions/range";

// What each label holds is tested through the worksheet function, in tests/functions.
const call = given({ amounts: [4, 5, "lost"] });

it("has METHODS' parameters, show right after the required ones", () => {
  expect(perPlantFunction.parameters.map(({ name }) => name)).toEqual(["amounts", "show", "planted", "lost_plants"]);
  for (const argument of Object.keys(perPlantFunction.choices)) {
    expect(perPlantFunction.parameters.map(({ name }) => name)).toContain(argument);
  }
});

it("each figure has the format it is best shown with", () => {
  const { lines } = perPlantFunction.shown(found(perPlantFunction.ask(call)), call);
  expect(lines.map(({ format }) => format)).toEqual([
    "amount",
    "count",
    "count",
    "count",
    "count",
    "amount",
    "amount",
    "amount",
    "text",
  ]);
});

it("misses a number where all plants were lost, and nothing else", () => {
  const call = given({ amounts: ["lost", "dead"] });
  const { missing } = perPlantFunction.shown(found(perPlantFunction.ask(call)), call);
  expect(missing).toMatchObject({ shows: ["answer", "Per plant"], problem: { problem: "all-lost" } });
});
