import { expect, it } from "vitest";
import { readWorthwhile } from "../../src/questions/readWorthwhile";
import { given } from "./range";

it("is 10 % when left out, and says that it was", () => {
  expect(readWorthwhile({})).toEqual({ size: 0.1, lessWanted: false, given: false });
  expect(readWorthwhile(given({ worthwhile: 0.1 }))).toEqual({ size: 0.1, lessWanted: false, given: true });
});

it("below zero, less is wanted", () => {
  expect(readWorthwhile(given({ worthwhile: "-20%" }))).toEqual({ size: 0.2, lessWanted: true, given: true });
});

it("refuses 0 and points", () => {
  expect(readWorthwhile(given({ worthwhile: 0 }))).toEqual({ problem: "zero-worthwhile" });
  expect(readWorthwhile(given({ worthwhile: 10 }))).toMatchObject({ problem: "percent-as-points" });
});
