import type { PlantsNeeded } from "../nouns/findings/planning";
import { plantsNeeded } from "../questions/plantsNeeded";
import { figure, line } from "./figure";
import type { WorksheetFunction } from "./worksheetFunction";

/** PLANTSNEEDED: how many plants to set out. */
export const plantsNeededFunction: WorksheetFunction<PlantsNeeded> = {
  id: "PLANTSNEEDED",
  parameters: [
    { name: "change", optional: false },
    { name: "unevenness", optional: true },
    { name: "show", optional: true },
    { name: "treatments", optional: true },
    { name: "beds", optional: true },
    { name: "chance", optional: true },
    { name: "losses", optional: true },
    { name: "worthwhile", optional: true },
  ],
  choices: { beds: ["one each"] },
  ask: plantsNeeded,
  shown: (found) => ({
    answer: () => figure(found.setOut),
    answerFormat: "count",
    lines: [
      line("Set out per treatment", "count", () => found.setOut),
      line("Needed after losses", "count", () => found.needed),
      line("In all", "count", () => found.inAll),
      line("Chance to see it", "percent", found.chanceToSee),
      line("Chance it is enough to matter", "percent", found.chanceEnough),
      line("Smallest change with half as many", "percent", () => found.smallestWithHalf()),
    ],
    columns: null,
    own: [],
  }),
};
