import type { ManyTrials } from "../nouns/findings/manyTrials";
import { manyTrials } from "../questions/manyTrials";
import { verdictText } from "../words/verdict";
import { figure, line } from "./figure";
import type { WorksheetFunction } from "./worksheetFunction";

/** MANYTRIALS: what several seasons, places or crops say together. */
export const manyTrialsFunction: WorksheetFunction<ManyTrials> = {
  id: "MANYTRIALS",
  parameters: [
    { name: "usual_averages", optional: false },
    { name: "new_averages", optional: false },
    { name: "show", optional: true },
    { name: "names", optional: true },
  ],
  choices: {},
  ask: manyTrials,
  shown: (found) => ({
    answer: () => figure(found.change),
    answerFormat: "percent",
    lines: [
      line("Change", "percent", () => found.change),
      line("Change low", "percent", () => found.changeRange.low),
      line("Change high", "percent", () => found.changeRange.high),
      line("Verdict", "text", () => verdictLine(found)),
      line("Trials", "count", () => found.trials.length),
      line("Ahead in", "count", () => found.ahead),
    ],
    columns: null,
    own: [],
  }),
};

/** A hint for want of trials says so; everywhere else plants are what is too few. */
function verdictLine({ verdict, trials }: ManyTrials): string {
  return trials.length === 1 ? "one trial" : verdictText(verdict).replace("plants", "trials");
}
