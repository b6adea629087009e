import type { WorthIt } from "../nouns/findings/worthIt";
import { worthIt } from "../questions/worthIt";
import { worthSays } from "../words/worthSays";
import { line } from "./figure";
import type { WorksheetFunction } from "./worksheetFunction";

/** WORTHIT: does the extra harvest pay for the extra cost? */
export const worthItFunction: WorksheetFunction<WorthIt> = {
  id: "WORTHIT",
  parameters: [
    { name: "usual", optional: false },
    { name: "new", optional: false },
    { name: "price", optional: false },
    { name: "extra_cost", optional: false },
    { name: "show", optional: true },
    { name: "how", optional: true },
    { name: "next_plants", optional: true },
  ],
  choices: { how: ["separate", "pairs"] },
  ask: worthIt,
  shown: (found) => ({
    answer: () => found.left,
    answerFormat: "amount",
    lines: [
      line("What it says", "text", () => worthSays(found.verdict)),
      line("Extra per plant", "amount", () => found.extra),
      line("Worth per plant", "amount", () => found.worth),
      line("Money left per plant", "amount", () => found.left),
      line("Money left, low", "amount", () => found.leftRange.low),
      line("Money left, high", "amount", () => found.leftRange.high),
      line("Cost of each extra unit", "amount", () => found.costOfExtra),
      line("Break-even extra", "amount", () => found.breakEvenExtra),
      line("Break-even change", "percent", () => found.breakEvenChange),
      line("For the next planting, low", "amount", () => found.nextPlanting.low),
      line("For the next planting, middle", "amount", () => found.nextPlanting.middle),
      line("For the next planting, high", "amount", () => found.nextPlanting.high),
    ],
    columns: null,
    own: [],
  }),
};
