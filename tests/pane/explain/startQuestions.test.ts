import { expect, it } from "vitest";
import { startFormula, startQuestions } from "../../../src/pane/explain/startQuestions";

const named = (value: string) => startQuestions.find((one) => one.value === value) ?? expect.fail(value);

it.each([
  [["D1:D33", "C1:C33", null], null, "=FAIRBED.COMPAREMANY(D1:D33,C1:C33)"],
  [["D1:D33", "C1:C33", "B1:B33"], null, "=FAIRBED.COMPAREMANY(D1:D33,C1:C33,,B1:B33)"],
  [["D1:D33", "C1:C33", null], "Bare soil", '=FAIRBED.COMPAREMANY(D1:D33,C1:C33,,,"Bare soil")'],
  [["D1:D33", "C1:C33", "B1:B33"], '6" bark', '=FAIRBED.COMPAREMANY(D1:D33,C1:C33,,B1:B33,"6"" bark")'],
])("several treatments, ranges %j and usual %s: %s", (references, usual, formula) => {
  expect(startFormula(named("COMPAREMANY"), references, usual)).toBe(formula);
});

it("two ranges and no more for two treatments", () => {
  expect(startFormula(named("COMPARETWO"), ["B1:B9", "C1:C9"], null)).toBe("=FAIRBED.COMPARETWO(B1:B9,C1:C9)");
});
