import { expect, it } from "vitest";
import type { Limits } from "../../src/nouns/known";
import { treatmentRange } from "../../src/words/treatmentRange";
import { against } from "./manyRecords";

const noLow = { absent: "no-lower-limit" } as const;
const noHigh = { absent: "no-upper-limit" } as const;
const onePlant = { absent: "one-plant" } as const;

it.each<[string, Limits]>([
  ["13 % to 95 %", { low: 0.1304, high: 0.95 }],
  ["−25 % to +38 %", { low: -0.245, high: 0.3751 }],
  ["0 % to +38 %", { low: 0, high: 0.3751 }],
  ["+13 % up, with no upper limit", { low: 0.1304, high: noHigh }],
  ["−100 % to +38 %", { low: noLow, high: 0.3751 }],
  ["anything at all", { low: noLow, high: noHigh }],
  ["one plant: no unevenness", { low: onePlant, high: onePlant }],
])("%s", (text, changeRange) => {
  expect(treatmentRange(against({ change: 0.1, changeRange, verdict: "open" }))).toBe(text);
});
