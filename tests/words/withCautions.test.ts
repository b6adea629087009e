import { expect, test } from "vitest";
import type { Caution } from "../../src/nouns/caution";
import type { Explanation } from "../../src/nouns/explanation";
import { lookOutFor } from "../../src/words/lookOutFor";
import { withCautions } from "../../src/words/withCautions";

const told = (cautions: readonly Caution[]): Explanation => ({
  finding: "f",
  say: "",
  compared: "",
  luck: [],
  lookOutFor: lookOutFor(cautions),
  next: [],
  workings: [],
});
const cell = told([{ caution: "C22" }, { caution: "C17" }, { caution: "C30" }, { caution: "C12" }]);
const codes = ({ lookOutFor: lines }: Explanation) => lines.map(({ code }) => code);

test("withCautions puts what the sheet around tells in its place by METHODS 9.2's priorities", () => {
  expect(codes(withCautions(cell, [{ caution: "C36", comparisons: 6 }, { caution: "C02" }]))).toEqual(
    "C02 C17 C22 C30 C36 C12".split(" "),
  );
});

test("withCautions lets beds silence the two checks and the one plant (METHODS 9.2, C11)", () => {
  const one = told([
    { caution: "C21", place: { argument: "new", row: 2, column: null, cell: "C3" } },
    { caution: "C22" },
  ]);
  expect(codes(withCautions(one, [{ caution: "C11" }]))).toEqual(["C11"]);
});

test("withCautions leaves an explanation as it is when there is nothing to add", () => {
  expect(withCautions(cell, [])).toBe(cell);
});
