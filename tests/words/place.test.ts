import { expect, test } from "vitest";
import { placeNamed, placeText } from "../../src/words/place";
import { cell, row } from "./records";

test("a place is its cell, else its row, else its row and column within the argument", () => {
  expect(placeText(cell("D10"))).toBe("D10");
  expect(placeText(row("usual", 3))).toBe("row 3 of usual");
  expect(placeText({ ...row("usual", 3), column: 2 })).toBe("row 3, column 2 of usual");
});

test("placeNamed says that D10 is a cell", () => {
  expect(placeNamed(cell("D10"))).toBe("cell D10");
  expect(placeNamed(row("new", 3))).toBe("row 3 of new");
});
