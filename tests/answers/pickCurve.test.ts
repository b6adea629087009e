import { expect, it } from "vitest";
import { pickCurveFunction } from "../../src/answers/pickCurve";
import { found, given } from "../questions/range";

// What each column holds is tested through the worksheet function, in tests/functions.
const shown = (treatments: readonly string[]) => {
  const call = given({ treatments, dates: ["2023-07-01", "2023-07-02"], amounts: [4, 5] });
  return pickCurveFunction.shown(found(pickCurveFunction.ask(call)), call);
};

it("has METHODS' parameters, show right after the required ones", () => {
  expect(pickCurveFunction.parameters.map(({ name }) => name)).toEqual([
    ...["treatments", "dates", "amounts", "show", "plants_each", "days"],
  ]);
});

it("a date stands for the one treatment's value, and for none where there are several", () => {
  expect(shown(["x", "x"]).columns?.().main).toBe(1);
  expect(shown(["x", "y"]).columns?.().main).toBeNull();
  expect(shown(["x", "y"]).answer).toBeNull();
});

it("the shares of the last week show as percents, in the table and alone", () => {
  const { columns, tables } = shown(["x", "y"]);
  expect(columns?.().last?.formats).toEqual([["text", "percent", "percent"]]);
  expect(tables?.["share in last 7 days"]?.().formats).toEqual([["percent", "percent"]]);
});
