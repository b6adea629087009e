import { expect, it } from "vitest";
import type { Sample } from "../../src/nouns/sample";
import { sameUnit } from "../../src/ranges/sameUnit";

const sample = (argument: string, unit: string | null): Sample => ({
  argument,
  name: null,
  where: argument,
  unit,
  entries: [],
  zerosUnverified: 0,
  averageAtEnd: null,
});

it("sameUnit refuses grams beside kilograms, naming both", () => {
  expect(sameUnit(sample("usual", "g"), sample("new", "kg"))).toEqual({
    problem: "units-differ",
    first: "usual",
    firstUnit: "g",
    second: "new",
    secondUnit: "kg",
  });
});

it("sameUnit has nothing to say when the units agree or one is not named", () => {
  expect(sameUnit(sample("usual", "g"), sample("new", "g"))).toBeNull();
  expect(sameUnit(sample("usual", "g"), sample("new", null))).toBeNull();
  expect(sameUnit(sample("usual", null), sample("new", "g"))).toBeNull();
});
