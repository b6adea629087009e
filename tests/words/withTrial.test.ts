import { expect, test } from "vitest";
import type { TellableFinding } from "../../src/nouns/report";
import { blankNotes, type TrialNotes, trialQuestions } from "../../src/nouns/trialNotes";
import { explain } from "../../src/words/explain";
import { inMainMeasure } from "../../src/words/mainMeasure";
import { withTrial } from "../../src/words/withTrial";
import { strawFinding } from "../pane/strawFinding";
import { asText } from "./asText";
import { neverSay, sentencesOf, wordsOf } from "./plainEnglish";
import { marlpitNotes, typicalTellable } from "./report/tellable";

const allNo: TrialNotes = { ...marlpitNotes, answers: Object.fromEntries(trialQuestions.map((one) => [one, "no"])) };

function told(finding: TellableFinding, notes: TrialNotes) {
  return withTrial(explain(inMainMeasure(finding, notes)), finding, notes);
}

const codes = (finding: TellableFinding, notes: TrialNotes) => told(finding, notes).lookOutFor.map(({ code }) => code);

const typical = (title: string) => {
  const [, finding] = typicalTellable.find(([one]) => one === title) ?? [];
  if (finding === undefined) throw new Error(`no typical finding "${title}"`);
  return finding;
};

test.each([
  ["Marlpit Corner, straw against bare soil, in beds", "two-in-beds"],
  ["Marlpit Corner, straw against bare soil, separate plants", "two-separate"],
  ["COMPAREMANY four mulches in beds against bare soil", "four-mulches"],
  ["WORTHIT straw pays", "worth-it"],
])("%s, as approved with the demo trial's notes, every answer no", async (title, name) => {
  const text = `${title}\n\n${asText(told(typical(title), allNo))}\n`;
  await expect(text).toMatchFileSnapshot(`approved/with-trial-${name}.txt`);
});

test.each(typicalTellable)("%s: sentences stay within 25 words and claim nothing new", (_, finding) => {
  const { say, compared } = told(finding, marlpitNotes);
  for (const text of [say, compared]) {
    expect(sentencesOf(text).filter((sentence) => wordsOf(sentence).length > 25)).toEqual([]);
    expect(neverSay.filter((claim) => claim.test(text))).toEqual([]);
  }
});

test.each(typicalTellable)("%s: blank notes leave today's wording", (_, finding) => {
  expect(told(finding, blankNotes)).toEqual(explain(finding));
});

test("cautions of the answers stand among the others by their priority", () => {
  const straw = strawFinding({ cautions: () => [{ caution: "C17" }, { caution: "C30" }, { caution: "C12" }] });
  expect(codes(straw, allNo)).toEqual("C17 C31 C32 C10 C30 C34 C12".split(" "));
  expect(codes(straw, { ...allNo, answers: { "drawn-by-lot": "yes" } })).toEqual("C17 C30 C12".split(" "));
});

test("a cause that was written down is not asked for again (METHODS 9.2, C04)", () => {
  const lost = strawFinding({ cautions: () => [{ caution: "C04" }, { caution: "C12" }] });
  expect(codes(lost, { ...blankNotes, answers: { "losses-written": "yes" } })).toEqual(["C12"]);
  expect(codes(lost, { ...blankNotes, answers: { "losses-written": "no" } })).toEqual(["C04", "C12"]);
  expect(codes(lost, blankNotes)).toEqual(["C04", "C12"]);
});

test("several trials as one result are not told as this trial", () => {
  const seasons = typicalTellable.filter(([, { finding }]) => finding === "many-trials");
  expect(seasons.length).toBeGreaterThan(0);
  for (const [, finding] of seasons) expect(told(finding, allNo)).toEqual(explain(finding));
});
