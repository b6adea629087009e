import type { ChanceToSee } from "../nouns/findings/planning";
import { chanceToSee } from "../questions/chanceToSee";
import { line } from "./figure";
import type { WorksheetFunction } from "./worksheetFunction";

/** CHANCETOSEE: how likely a trial of a given size shows a given change. */
export const chanceToSeeFunction: WorksheetFunction<ChanceToSee> = {
  id: "CHANCETOSEE",
  parameters: [
    { name: "change", optional: false },
    { name: "plants_each", optional: false },
    { name: "unevenness", optional: true },
    { name: "show", optional: true },
    { name: "treatments", optional: true },
    { name: "beds", optional: true },
    { name: "worthwhile", optional: true },
  ],
  choices: { beds: ["one each"] },
  ask: chanceToSee,
  shown: (found) => ({
    answer: () => found.chanceToSee,
    answerFormat: "percent",
    lines: [
      line("Chance to see it", "percent", () => found.chanceToSee),
      line("Chance it is enough to matter", "percent", () => found.chanceEnough),
    ],
    columns: null,
    own: [],
  }),
};
