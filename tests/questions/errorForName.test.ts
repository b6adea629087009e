import { expect, it } from "vitest";
import { errorForName } from "../../src/questions/errorForName";
import { range } from "./range";

const names = range("treatments", ["Straw", { error: "#REF!" }, { error: "#N/A" }]);

it("names the first error value and its cell", () => {
  expect(errorForName(names, 1)).toMatchObject({ problem: "error-for-name", given: "#REF!", place: { cell: "B3" } });
  expect(errorForName(range("treatments", ["Straw", null, 4]), 1)).toBeNull();
});

it("looks at the names' own column only", () => {
  const block = {
    ...names,
    cells: [
      ["Straw", { error: "#N/A" }],
      [{ error: "#REF!" }, 8],
    ],
  };
  expect(errorForName(block, 2)).toMatchObject({ given: "#REF!", place: { cell: "B3" } });
});
