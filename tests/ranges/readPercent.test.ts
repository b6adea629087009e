import { expect, it } from "vitest";
import { readPercent } from "../../src/ranges/readPercent";

it.each([
  ["30%", 0.3],
  ["30 %", 0.3],
  ["30,5 %", 0.305],
  ["−12.5%", -0.125],
  [" 15\u00A0％ ", 0.15],
  ["0.1%", 0.001],
])("readPercent reads %j as %d", (text, fraction) => {
  expect(readPercent(text)).toBe(fraction);
});

it.each([["30"], ["%"], ["%30"], ["30%%"], ["30 g%"], ["1,250%"], ["about"], [""]])(
  "readPercent does not read %j",
  (text) => {
    expect(readPercent(text)).toBeNull();
  },
);
