import type { SmallestChange } from "../nouns/findings/planning";
import { smallestChange } from "../questions/smallestChange";
import { figure, line } from "./figure";
import type { WorksheetFunction } from "./worksheetFunction";

/** SMALLESTCHANGE: what a trial of a given size can show. */
export const smallestChangeFunction: WorksheetFunction<SmallestChange> = {
  id: "SMALLESTCHANGE",
  parameters: [
    { name: "plants_each", optional: false },
    { name: "unevenness", optional: true },
    { name: "show", optional: true },
    { name: "treatments", optional: true },
    { name: "beds", optional: true },
    { name: "chance", optional: true },
    { name: "direction", optional: true },
  ],
  choices: { beds: ["one each"], direction: ["more", "less"] },
  ask: smallestChange,
  shown: (found) => ({
    answer: () => figure(found.change),
    answerFormat: "percent",
    lines: [line("Smallest change", "percent", () => found.change)],
    columns: null,
    own: [],
  }),
};
