import { expect, it } from "vitest";
import { holdsOurCall } from "../../src/host/holdsOurCall";

it.each([
  ["=FAIRBED.UPDOWN(A1,B1)", true],
  ["=1+fairbed.updown(A1,B1)", true],
  ["=_xldudf_FAIRBED_UPDOWN(A1,B1)", false],
  ["=MYFAIRBED.UPDOWN(A1,B1)", false],
  ["=SUM(A1:A9)", false],
  ["", false],
])("%s: %s", (formula, holds) => {
  expect(holdsOurCall(formula)).toBe(holds);
});
