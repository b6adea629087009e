import { expect, it } from "vitest";
import type { Reading } from "../../src/nouns/reading";
import { readingsCautions } from "../../src/questions/readingsCautions";
import { range } from "./range";

const place = { argument: "cells", row: 1, column: null, cell: "B2" };
const readings: readonly Reading[] = [
  { kind: "zero", place, text: "0" },
  { kind: "unit-converted", place, text: "4 kg", amount: { value: 4000, unit: "g" } },
  { kind: "mark-removed", place, text: "~5", amount: { value: 5, unit: null } },
  { kind: "zero", place, text: "0" },
  { kind: "mark-removed", place, text: "6*", amount: { value: 6, unit: null } },
  { kind: "lost", place, text: "dead" },
];
const sure = range("cells", [0]);
const unsure = { ...sure, zerosVerified: false };

it("units and marks are counted, and zeros where they may be empty cells", () => {
  expect(readingsCautions(unsure, readings)).toEqual([
    { caution: "C14", count: 3 },
    { caution: "C15", zeros: 2 },
  ]);
});

it("zeros that are known to be zeros are not", () => {
  expect(readingsCautions(sure, readings)).toEqual([{ caution: "C14", count: 3 }]);
});

it("what was read with nothing taken away raises nothing", () => {
  expect(readingsCautions(unsure, readings.slice(5))).toEqual([]);
  expect(readingsCautions(unsure, [])).toEqual([]);
});
