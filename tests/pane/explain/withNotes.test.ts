// @vitest-environment jsdom
import { beforeEach, expect, it } from "vitest";
import { blankNotes, type TrialNotes } from "../../../src/nouns/trialNotes";
import { buttonNamed, type StartedPane, settled, shownText, startedPane } from "../startedPane";

let pane: StartedPane;

beforeEach(async () => {
  pane = await startedPane();
});

/** Keeps notes as the part Trial does, and comes back to Explain. */
async function note(notes: Partial<TrialNotes>): Promise<string> {
  await pane.sheet.keepNotes({ ...blankNotes, ...notes });
  buttonNamed(pane.root, "Explain").click();
  await settled();
  return shownText(pane.root);
}

const chosen = "If you chose which plants got which, your choice may be the cause.";
const where = { crop: "courgettes", unit: "grams", place: "Marlpit Corner", season: "2023" };

it("an answer of the checklist is warned of, and no longer once it is another", async () => {
  expect(shownText(pane.root)).not.toContain(chosen);
  expect(await note({ answers: { "drawn-by-lot": "no" } })).toContain(chosen);
  expect(await note({ answers: { "drawn-by-lot": "yes" } })).not.toContain(chosen);
});

it("says how many questions are answered", async () => {
  expect(shownText(pane.root)).toContain("Trial questions: 0 of 11 answered. The part Trial asks the rest.");
  expect(await note({ answers: { "drawn-by-lot": "dont-know" } })).toContain("Trial questions: 1 of 11 answered.");
});

it("what was measured, where and when is told with the result", async () => {
  expect(await note(where)).toContain("Our trial: grams of courgettes per plant, Marlpit Corner, 2023.");
});

it("notes about another sheet are not told", async () => {
  const text = await note({ ...where, answers: { "drawn-by-lot": "no" }, onlySheet: "Nets" });
  expect(text).not.toContain("courgettes");
  expect(text).not.toContain(chosen);
  expect(text).toContain("0 of 11 answered");
});

it("a heading of a treatment calls for its line on safety, and the finding stays what it was", async () => {
  const finding = () => pane.root.querySelector(".finding")?.textContent;
  const before = finding();
  expect(shownText(pane.root)).not.toContain("Safety");
  pane.sheet.fill("C1", [["Chicken pellets"]]);
  await settled();
  expect(shownText(pane.root)).toContain("SafetyRaw manure can carry germs that make people ill.");
  expect(finding()).toBe(before);
});

it("a word in the notes does as well", async () => {
  expect(await note({ measure: "fruit after feeding" })).toContain("SafetyFollow the product label");
});
