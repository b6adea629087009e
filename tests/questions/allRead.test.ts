import { expect, it } from "vitest";
import { allRead } from "../../src/questions/allRead";

const first = { problem: "no-change" } as const;
const second = { problem: "zero-worthwhile" } as const;

it("gives what was read, as it was read", () => {
  const read = { a: 0, b: null, c: "x", d: { kept: true } };
  expect(allRead(read)).toBe(read);
});

it("gives the first problem in the order of the arguments", () => {
  expect(allRead({ a: 1, b: first, c: second })).toBe(first);
  expect(allRead({ a: 1, c: second, b: first })).toBe(second);
});
