import { expect, test } from "vitest";
import { trialQuestions } from "../../src/nouns/trialNotes";
import { trialCautions } from "../../src/words/trialCautions";

/** By METHODS 9.2 and 9.3: which answer warns of what. */
const warned: Readonly<Record<string, string>> = {
  "one-difference no": "C32",
  "one-batch no": "C31",
  "drawn-by-lot no": "C10",
  "measure-first no": "C34",
};

const asked = trialQuestions.flatMap((question) =>
  (["yes", "no", "dont-know"] as const).map((answer) => [`${question} ${answer}`, { [question]: answer }] as const),
);

test.each(asked)("%s warns of what METHODS 9.2 says, or of nothing", (name, answers) => {
  const code = warned[name];
  expect(trialCautions({ answers }).map(({ caution }) => caution)).toEqual(code === undefined ? [] : [code]);
});

test("questions that are not answered warn of nothing, several answers of each", () => {
  expect(trialCautions({ answers: {} })).toEqual([]);
  const answers = Object.fromEntries(trialQuestions.map((question) => [question, "no"]));
  expect(trialCautions({ answers }).map(({ caution }) => caution)).toEqual(["C32", "C31", "C10", "C34"]);
});
