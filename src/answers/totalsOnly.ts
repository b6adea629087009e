import type { TotalsOnly } from "../nouns/findings/totalsOnly";
import { totalsOnly } from "../questions/totalsOnly";
import { cautionTexts } from "../words/cautionTexts";
import { totalsOnlySays } from "../words/totalsOnlySays";
import { line } from "./figure";
import type { WorksheetFunction } from "./worksheetFunction";

/** TOTALSONLY: two season totals without a record of each plant. */
export const totalsOnlyFunction: WorksheetFunction<TotalsOnly> = {
  id: "TOTALSONLY",
  parameters: [
    { name: "usual_total", optional: false },
    { name: "usual_plants", optional: false },
    { name: "new_total", optional: false },
    { name: "new_plants", optional: false },
    { name: "show", optional: true },
    { name: "unevenness", optional: true },
    { name: "measure", optional: true },
  ],
  choices: { measure: ["count", "weight"] },
  ask: totalsOnly,
  shown: (found) => ({
    answer: () => totalsOnlySays(found),
    lines: [
      line("What it says", "text", () => totalsOnlySays(found)),
      line("Per plant, usual", "amount", () => found.usual.perPlant),
      line("Per plant, new", "amount", () => found.tried.perPlant),
      line("Change", "percent", () => found.change),
      line("Change low", "percent", () => found.changeRange.low),
      line("Change high", "percent", () => found.changeRange.high),
      line("Real if unevenness is below", "percent", () => found.realBelow),
      line("Counts only, low", "percent", () => found.countsOnly.low),
      line("Counts only, high", "percent", () => found.countsOnly.high),
      line("Cautions", "text", () => cautionTexts(found).join(" ")),
    ],
    columns: null,
    own: [],
  }),
};
