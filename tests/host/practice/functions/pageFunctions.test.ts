import { expect, it } from "vitest";
import { pageFunctions } from "../../../../src/host/practice/functions/pageFunctions";

it("pageFunctions is the same list for every script of the page", () => {
  const kept = pageFunctions();
  expect((globalThis as { [key: symbol]: unknown })[Symbol.for("fairbed.associated")]).toBe(kept);
  expect(pageFunctions()).toBe(kept);
});
