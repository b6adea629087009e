import { expect, it } from "vitest";
import { sameShape } from "../../src/ranges/sameShape";
import { block, column } from "./column";

it("sameShape names both sizes when they differ", () => {
  expect(sameShape(column([1, 2, 3]), column([1, 2], { argument: "new" }))).toEqual({
    problem: "shapes-differ",
    first: { argument: "usual", rows: 3, columns: 1 },
    second: { argument: "new", rows: 2, columns: 1 },
  });
});

it("sameShape refuses a row beside a column of as many cells", () => {
  expect(sameShape(column([1, 2]), block([[1, 2]]))).toMatchObject({ problem: "shapes-differ" });
});

it("sameShape refuses rows of different length", () => {
  expect(sameShape(block([[1, 2]]), block([[1, 2, 3]]))).toMatchObject({
    problem: "shapes-differ",
    first: { columns: 2 },
    second: { columns: 3 },
  });
});

it("sameShape has nothing to say about blocks of one size", () => {
  expect(sameShape(block([[1, 2]]), block([[null, "a"]]))).toBeNull();
});
