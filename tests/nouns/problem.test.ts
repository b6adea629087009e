import { expect, it } from "vitest";
import { isProblem } from "../../src/nouns/problem";

it("tells why there is no finding from a finding", () => {
  expect(isProblem({ problem: "no-change" })).toBe(true);
  expect(isProblem({ finding: "up-down" })).toBe(false);
});
