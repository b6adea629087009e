import { expect, it } from "vitest";
import { problemCode } from "../../src/cells/problemCode";

const place = { argument: "usual", row: 1, column: null, cell: null };

it("is #N/A where a number is due and the data hold none", () => {
  expect(problemCode({ problem: "no-usable-plants", where: "B2:B9" })).toBe("#N/A");
  expect(problemCode({ problem: "usual-zero", tried: 3 })).toBe("#N/A");
  expect(problemCode({ problem: "all-lost", where: "B2:B9" })).toBe("#N/A");
});

it("is #VALUE! where the call is wrong", () => {
  expect(problemCode({ problem: "negative-amount", place, given: -1 })).toBe("#VALUE!");
  expect(problemCode({ problem: "missing-argument", argument: "usual" })).toBe("#VALUE!");
});
