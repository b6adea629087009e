import { expect, it } from "vitest";
import { unevennessFunction } from "../../src/answers/unevenness";
import { found, given } from "../questions/range";

// What each label holds is tested through the worksheet function, in tests/functions.
const call = given({ amounts: [4, 5, 6] });

it("has METHODS' parameters, show right after the required ones", () => {
  expect(unevennessFunction.parameters.map(({ name }) => name)).toEqual(["amounts", "show", "treatments", "beds"]);
  for (const argument of Object.keys(unevennessFunction.choices)) {
    expect(unevennessFunction.parameters.map(({ name }) => name)).toContain(argument);
  }
});

it("each figure has the format it is best shown with", () => {
  const { lines } = unevennessFunction.shown(found(unevennessFunction.ask(call)), call);
  expect(lines.map(({ format }) => format)).toEqual([]);
});

it("a table by rows whose main value is the unevenness, and 'plan with' as its own word", () => {
  const { columns, own } = unevennessFunction.shown(found(unevennessFunction.ask(call)), call);
  const table = columns?.();
  expect(table?.header.indexOf("Unevenness")).toBe(table?.main);
  expect(table?.rows.map(([name]) => name)).toEqual(["Treatment 1", "All"]);
  expect(own.map(({ label, format }) => [label, format])).toEqual([["plan with", "percent"]]);
});
