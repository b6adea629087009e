import { expect, it } from "vitest";
import { plainLabel } from "../../src/ranges/plainLabel";

it("plainLabel is the label as typed, single-spaced", () => {
  expect(["  Grass   clippings ", 12, true].map(plainLabel)).toEqual(["Grass clippings", "12", "TRUE"]);
});

it("an empty cell and an error are no label", () => {
  expect([null, " ", { error: "#N/A" }].map(plainLabel)).toEqual([null, null, null]);
});
