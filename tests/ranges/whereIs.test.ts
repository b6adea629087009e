import { expect, it } from "vitest";
import { whereIs } from "../../src/ranges/whereIs";
import { block, column } from "./column";

it("whereIs gives the address without its sheet", () => {
  expect(
    whereIs(
      column(
        Array.from({ length: 9 }, () => 1),
        { corner: { sheet: "Beds", row: 1, column: 3 } },
      ),
    ),
  ).toBe("C1:C9");
  expect(
    whereIs(
      block([
        [1, 2],
        [3, 4],
      ]),
    ),
  ).toBe("D1:E2");
});

it("whereIs gives one cell's name for one cell", () => {
  expect(whereIs(column([5]))).toBe("D1");
});

it("whereIs gives the argument's name when no address is known", () => {
  expect(whereIs(column([1, 2], { corner: null }))).toBe("usual");
});
