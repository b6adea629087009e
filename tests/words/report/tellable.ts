import { isTellable, type Report, type TellableFinding, type Telling } from "../../../src/nouns/report";
import { blankNotes, type TrialNotes } from "../../../src/nouns/trialNotes";
import { reportOf } from "../../../src/words/report/reportOf";
import { everyTypical } from "../everyTypical";

/** Every typical finding that can be told, by the title of its approved file. */
export const typicalTellable: readonly (readonly [title: string, finding: TellableFinding])[] = Object.entries(
  everyTypical,
).flatMap(([title, finding]) => (isTellable(finding) ? [[title, finding] as const] : []));

/** The demo trial's notes: what Marlpit Corner's page says of it (our own invented garden). */
export const marlpitNotes: TrialNotes = {
  answers: {
    "one-difference": "yes",
    "one-batch": "yes",
    "drawn-by-lot": "yes",
    "two-full-beds": "yes",
    "one-picking-rule": "yes",
    "one-stop-date": "yes",
    "measure-first": "no",
    "equal-space": "dont-know",
  },
  crop: "courgettes",
  measure: "harvest per plant",
  unit: "grams",
  place: "Marlpit Corner",
  season: "2023",
  worthwhile: 0.1,
  stopDate: 45_168,
  onlySheet: "",
};

/** Something to tell; what is not said is blank. */
export function telling(findings: readonly TellableFinding[], more: Partial<Telling> = {}): Telling {
  return { findings, notes: blankNotes, title: "", question: "", drawNumber: null, safety: [], ...more };
}

/** A typical finding's report by its title. */
export function reportFrom(titles: readonly string[], more: Partial<Telling> = {}): Report {
  const found = titles.map((title) => {
    const [, finding] = typicalTellable.find(([one]) => one === title) ?? [];
    if (finding === undefined) throw new Error(`no typical finding "${title}"`);
    return finding;
  });
  return reportOf(telling(found, more));
}
