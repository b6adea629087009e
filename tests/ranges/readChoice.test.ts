import { expect, it } from "vitest";
import { missing } from "../../src/ranges/option";
import { readChoice } from "../../src/ranges/readChoice";
import { column } from "./column";

const rule = { argument: "how", allowed: ["separate", "pairs ranks"], fallback: "separate" } as const;

it("readChoice takes an allowed word whatever its letter case and spaces", () => {
  expect(readChoice(column([" Pairs   RANKS "]), rule)).toBe("pairs ranks");
});

it.each([
  ["pair", "pair"],
  [" pair ", "pair"],
  [5, "5"],
  [true, "TRUE"],
  [{ error: "#N/A" }, "#N/A"],
])("readChoice refuses %j and lists what is allowed", (cell, given) => {
  expect(readChoice(column([cell]), rule)).toEqual({
    problem: "unknown-choice",
    argument: "how",
    given,
    allowed: rule.allowed,
  });
});

it("readChoice gives the fallback for an omitted argument, which may be a Problem", () => {
  expect(readChoice(null, rule)).toBe("separate");
  expect(readChoice(column([""]), { ...rule, fallback: missing("how") })).toEqual(missing("how"));
});

it("readChoice refuses a block", () => {
  expect(readChoice(column(["separate", "separate"]), rule)).toMatchObject({ problem: "one-cell-wanted" });
});
