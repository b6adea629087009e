import { describe, expect, it } from "vitest";
import { readNumeral } from "../../src/ranges/readNumeral";

const sure = (value: number, plain = false) => ({ value, plain, doubtful: false, otherwise: null });

describe("readNumeral reads commas and points as METHODS 3 says", () => {
  it.each([
    ["506", sure(506, true)],
    ["0.235", sure(0.235, true)],
    [".5", sure(0.5, true)],
    ["3,5", sure(3.5)],
    ["12,34", sure(12.34)],
    ["1,2505", sure(1.2505)],
    ["0,726", sure(0.726)],
    [",726", sure(0.726)],
    ["1234,567", sure(1234.567)],
    ["1,250", { value: 1250, plain: false, doubtful: true, otherwise: 1.25 }],
    ["1.250", { value: 1.25, plain: false, doubtful: false, otherwise: 1250 }],
    ["12,250", { value: 12_250, plain: false, doubtful: true, otherwise: 12.25 }],
    ["12.250", { value: 12.25, plain: false, doubtful: false, otherwise: 12_250 }],
    ["1.2505", sure(1.2505, true)],
    ["1234.567", sure(1234.567, true)],
    ["12,250,000", sure(12_250_000)],
    ["1,250,000", sure(1_250_000)],
    ["1.250.000", sure(1_250_000)],
    ["1,250.5", sure(1250.5)],
    ["1.250,5", sure(1250.5)],
    ["1,250.500", sure(1250.5)],
    ["1'250", sure(1250)],
    ["12'250", sure(12_250)],
    ["1'250'000", sure(1_250_000)],
    ["1'250.75", sure(1250.75)],
    ["1\u00A0250,5", sure(1250.5)],
  ])("%s", (run, numeral) => {
    expect(readNumeral(run, false)).toEqual(numeral);
  });

  it("three digits after a comma or point are decimals with kg, lb, l and m", () => {
    expect(readNumeral("1,250", true)).toEqual(sure(1.25));
    expect(readNumeral("1.250", true)).toEqual(sure(1.25, true));
  });
});

it.each([
  ["1,25,000"],
  ["1,250,00"],
  ["1.5.24"],
  ["1,250.5.5"],
  ["12,50.5"],
  ["0,250,000"],
  ["1,2,3"],
  ["12'250'0"],
  ["1,250'000"],
  ["0250,000,000"],
  ["1250,000,000"],
  ["1,2500,000"],
  ["1,0002,000"],
  ["1'25,5"],
  ["1,250."],
  ["5,"],
  [""],
  ["5."],
])("readNumeral finds no number in %j", (run) => {
  expect(readNumeral(run, false)).toBeNull();
});
