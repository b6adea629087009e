import { expect, it } from "vitest";
import { findCalls } from "../../src/formula/findCalls";
import { withArgument } from "../../src/formula/withArgument";

it.each([
  ["=FAIRBED.UPDOWN(B2:B9,C2:C9)", 2, '"Change low"', '=FAIRBED.UPDOWN(B2:B9,C2:C9,"Change low")'],
  ["=fairbed.UPDOWN(B2, C2)", 3, "90%", "=FAIRBED.UPDOWN(B2,C2,,90%)"],
  ['=FAIRBED.UPDOWN(B2,C2,"words",90%)', 2, '"say"', '=FAIRBED.UPDOWN(B2,C2,"say",90%)'],
  ['=FAIRBED.UPDOWN(B2,C2,"words")', 2, "", "=FAIRBED.UPDOWN(B2,C2)"],
  ["=IF(A1,FAIRBED.PERPLANT(OFFSET(B2,0,0,8)))", 1, '"Total"', '=FAIRBED.PERPLANT(OFFSET(B2,0,0,8),"Total")'],
])("%s with argument %d = %s", (formula, index, text, rebuilt) => {
  const [call] = findCalls(formula);
  if (call === undefined) throw new Error("no call");
  expect(withArgument(call, index, text)).toBe(rebuilt);
});
