import { expect, it } from "vitest";
import { formatted } from "../../src/functions/formatted";

it("only numbers that are percents bring a format along", () => {
  const block = {
    outputs: [["Change", 0.455, "no range", 12]],
    formats: [["text", "percent", "percent", "count"]],
  } as const;
  expect(formatted(block)).toEqual([
    ["Change", { type: "Double", basicValue: 0.455, numberFormat: "0.0%" }, "no range", 12],
  ]);
});
