import { describe, expect, it } from "vitest";
import { convert, unitOf } from "../../src/ranges/unit";
import { near } from "../near";

/** Printed values: NIST Handbook 44, appendix C, and SP 811 (2008), appendix B.8, where bold factors are exact. */
describe("convert agrees with the printed factors", () => {
  it.each([
    ["lb", "g", 453.59237],
    ["oz", "g", 28.349523125],
    ["lb", "kg", 0.45359237],
    ["lb", "oz", 16],
    ["in", "cm", 2.54],
    ["ft", "m", 0.3048],
    ["ft", "in", 12],
    ["kg", "g", 1000],
    ["l", "ml", 1000],
    ["m", "cm", 100],
  ] as const)("1 %s in %s", (from, to, printed) => {
    near("there", convert(1, from, to) ?? Number.NaN, printed, { relative: Number.EPSILON });
    near("and back", convert(printed, to, from) ?? Number.NaN, 1, { relative: Number.EPSILON });
  });

  it("0.235 kg is 235 g to the last digit", () => {
    expect(convert(0.235, "kg", "g")).toBe(235);
  });
});

it("convert leaves a value in its own unit as it is, beyond the digits that a sheet shows", () => {
  expect(convert(0.1 + 0.2, "kg", "kg")).toBe(0.1 + 0.2);
});

it("convert gives null between weight, volume and length", () => {
  expect([convert(1, "g", "ml"), convert(1, "cm", "kg"), convert(1, "l", "m")]).toEqual([null, null, null]);
});

it.each([
  ["g", "g"],
  ["Grams", "g"],
  ["kgs", "kg"],
  ["KILOS", "kg"],
  ["lbs.", "lb"],
  ["pounds", "lb"],
  ["oz.", "oz"],
  ["millilitres", "ml"],
  ["liter", "l"],
  ["centimeters", "cm"],
  ["metres", "m"],
  ["inches", "in"],
  ['"', "in"],
  ["feet", "ft"],
])("unitOf knows %s as %s", (word, unit) => {
  expect(unitOf(word)).toBe(unit);
});

it.each([["mg"], ["fruit"], [""], ["."], ["g g"], ["l.b"], ["constructor"]])("unitOf gives null for %j", (word) => {
  expect(unitOf(word)).toBeNull();
});
