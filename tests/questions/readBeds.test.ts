import { expect, it } from "vitest";
import { readBeds } from "../../src/questions/readBeds";
import { range } from "./range";

it.each([
  [4, 4],
  ["4", 4],
  ["one each", "one each"],
  [" One  EACH ", "one each"],
  [null, null],
  ["", null],
])("%j is %j", (cell, beds) => {
  expect(readBeds(range("beds", cell))).toBe(beds);
});

it("is null when left out, and refuses anything else", () => {
  expect(readBeds(null)).toBeNull();
  expect(readBeds(range("beds", "each"))).toMatchObject({ problem: "unknown-choice", argument: "beds" });
  expect(readBeds(range("beds", 0))).toMatchObject({ problem: "not-whole", low: 1 });
  expect(readBeds(range("beds", 2.5))).toMatchObject({ problem: "not-whole" });
  expect(readBeds(range("beds", true))).toMatchObject({ problem: "not-a-number", argument: "beds", given: "TRUE" });
});
