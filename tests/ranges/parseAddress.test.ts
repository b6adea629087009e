import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseAddress } from "../../src/ranges/parseAddress";

describe("parseAddress gives the top-left corner of", () => {
  it.each([
    ["Sheet1!B2:C9", "Sheet1", 2, 2],
    ["Sheet1!D10", "Sheet1", 10, 4],
    ["'My sheet''s'!$B$2", "My sheet's", 2, 2],
    ["'North! bed'!A1", "North! bed", 1, 1],
    ["'[Beds 2023.xlsx]Picks'!$B$2:$B$9", "Picks", 2, 2],
    ["[Beds.xlsx]Picks!B2", "Picks", 2, 2],
    ["'2023, beds: all'!B2", "2023, beds: all", 2, 2],
    ["B2:C9", "", 2, 2],
    ["Sheet1!C9:B2", "Sheet1", 2, 2],
    ["Sheet1!B:B", "Sheet1", 1, 2],
    ["Sheet1!2:4", "Sheet1", 2, 1],
    ["Sheet1!XFD1048576", "Sheet1", 1_048_576, 16_384],
    ["Sheet1!aa1", "Sheet1", 1, 27],
    ["Sheet1! B2:C9 ", "Sheet1", 2, 2],
  ])("%s", (address, sheet, row, column) => {
    expect(parseAddress(address)).toEqual({ sheet, row, column });
  });
});

describe("parseAddress gives null for what is not one block of cells", () => {
  it.each([
    [undefined],
    [null],
    [""],
    ["A1,B2"],
    ["Beds!A1:A3,Beds!C1:C3"],
    ["'My beds'!A1,'My beds'!C1"],
    ["Beds!A1:Beds!B2"],
    ["'Beds!A1"],
    ["#REF!"],
    ["Sheet1!#REF!"],
    ["harvest"],
    ["B"],
    ["2"],
    ["B2:C"],
    ["2:C3"],
    ["A1:B2:C3"],
  ])("%j", (address) => {
    expect(parseAddress(address)).toBeNull();
  });
  it.each([["A0"], ["XFE1"], ["A1048577"], ["B2:3"], ["AAAA1"], ["B2:"], [":"], ["$"], ["$:$"]])("%j", (address) => {
    expect(parseAddress(address)).toBeNull();
  });
});

it("parseAddress of any text is a cell of the sheet or null", () => {
  fc.assert(
    fc.property(fc.string(), (address) => {
      const corner = parseAddress(address);
      expect(corner === null || (corner.row >= 1 && corner.column >= 1)).toBe(true);
    }),
  );
});
