import { expect, it } from "vitest";
import { argumentHelp } from "../../../../src/host/practice/functions/argumentHelp";

it("argumentHelp carries the built descriptions into the grid", () => {
  const help = argumentHelp({
    id: "UPDOWN",
    description: "Percent change",
    parameters: [
      { name: "usual", description: "the usual way", dimensionality: "matrix" },
      { name: "show", optional: true },
    ],
  });
  expect(help).toMatchObject({ functionName: "FAIRBED.UPDOWN", description: "Percent change" });
  expect(help.functionParameter).toMatchObject([
    { name: "usual", detail: "the usual way", example: "B2:B9", require: 1, repeat: 0 },
    { name: "show", detail: "", example: "show", require: 0, repeat: 0 },
  ]);
});
