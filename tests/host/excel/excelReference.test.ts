import { expect, it } from "vitest";
import { excelReference, withoutSheet } from "../../../src/host/excel/excelReference";

it.each([
  ["B2:B9", { sheet: "Home", range: "B2:B9", spills: false }],
  ["Mulch!B:B", { sheet: "Mulch", range: "B:B", spills: false }],
  ["'This year''s'!B2#", { sheet: "This year's", range: "B2", spills: true }],
  ["'Wow! plants'!B2", { sheet: "Wow! plants", range: "B2", spills: false }],
  ["Anna_s!Straw", { sheet: "Anna_s", range: "Straw", spills: false }],
  ["Plants[New!]", { sheet: "Home", range: "Plants[New!]", spills: false }],
  ["Plants['#]", { sheet: "Home", range: "Plants['#]", spills: false }],
  ["Plants[Grams]", { sheet: "Home", range: "Plants[Grams]", spills: false }],
])("%s is taken apart", (reference, parts) => {
  expect(excelReference(reference, "Home")).toEqual(parts);
});

it("an address loses its sheet", () => {
  expect(withoutSheet("'Wow! plants'!B2:C9")).toBe("B2:C9");
});
