import type { MissingNumber } from "../cells/showable";
import type { UpDown } from "../nouns/findings/upDown";
import { noPercent, upDown } from "../questions/upDown";
import { shortChange } from "../words/upDown";
import { figure, line } from "./figure";
import type { WorksheetFunction } from "./worksheetFunction";

/** UPDOWN: percent change with the usual as the base. */
export const upDownFunction: WorksheetFunction<UpDown> = {
  id: "UPDOWN",
  parameters: [
    { name: "usual", optional: false },
    { name: "new", optional: false },
    { name: "show", optional: true },
    { name: "confidence", optional: true },
  ],
  choices: {},
  ask: upDown,
  shown: (found) => ({
    answer: () => figure(found.change),
    answerFormat: "percent",
    lines: [
      line("Change", "percent", () => found.change),
      line("Change low", "percent", () => found.changeRange.low),
      line("Change high", "percent", () => found.changeRange.high),
      line("Times as much", "decimal", () => found.timesAsMuch),
      line("Average, usual", "amount", () => found.usualMean),
      line("Average, new", "amount", () => found.triedMean),
      line("Plants, usual", "count", () => found.usualPlants),
      line("Plants, new", "count", () => found.triedPlants),
    ],
    columns: null,
    own: [line("short", "text", () => shortChange(found))],
    missing: missingPercent(found),
  }),
};

/** With a usual of 0 every figure that is a share of it is missing; the amounts stand. */
function missingPercent(found: UpDown): MissingNumber | null {
  const problem = noPercent(found);
  const shows = ["answer", "short", "Change", "Change low", "Change high", "Times as much"];
  return problem === null ? null : { shows, problem };
}
