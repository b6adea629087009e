import { expect, it } from "vitest";
import { twoTreatmentsWorkings } from "../../src/words/twoTreatmentsWorkings";
import { strawFinding } from "../pane/strawFinding";

it.each([
  [0.95, "Worthwhile is 10 %, and the range is a 95 % one."],
  [0.999, "Worthwhile is 10 %, and the range is a 99.9 % one."],
  [0.99999, "Worthwhile is 10 %, and the range is a 99.999 % one."],
])("a confidence of %d is told as it is, never as 100 %", (confidence, sentence) => {
  const worthwhile = { size: 0.1, lessWanted: false, given: true };
  expect(twoTreatmentsWorkings(strawFinding({ confidence, worthwhile }))).toContain(sentence);
});
