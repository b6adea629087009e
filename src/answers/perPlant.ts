import type { MissingNumber } from "../cells/showable";
import type { PerPlant } from "../nouns/findings/perPlant";
import { allLost } from "../questions/allLost";
import type { Given } from "../questions/given";
import { perPlant } from "../questions/perPlant";
import { figure, line } from "./figure";
import type { WorksheetFunction } from "./worksheetFunction";

/** PERPLANT: yield per plant under a named rule for lost plants. */
export const perPlantFunction: WorksheetFunction<PerPlant> = {
  id: "PERPLANT",
  parameters: [
    { name: "amounts", optional: false },
    { name: "show", optional: true },
    { name: "planted", optional: true },
    { name: "lost_plants", optional: true },
  ],
  choices: { lost_plants: ["leave out", "count as zero"] },
  ask: perPlant,
  shown: (found, given) => ({
    answer: () => figure(found.perPlant),
    answerFormat: "amount",
    lines: [
      line("Per plant", "amount", () => found.perPlant),
      line("Plants set out", "count", () => found.setOut),
      line("Plants lost", "count", () => found.lost),
      line("Not recorded", "count", () => found.notRecorded),
      line("Plants counted", "count", () => found.counted),
      line("Total", "amount", () => found.total),
      line("Per surviving plant", "amount", () => found.perSurvivingPlant),
      line("Per plant set out", "amount", () => found.perPlantSetOut),
      line("Lost plants were", "text", () => (found.rule === "leave out" ? "left out" : "counted as zero")),
    ],
    columns: null,
    own: [],
    missing: missingAverage(found, given),
  }),
};

/** All plants lost and left out: there is no average, though the other figures stand. */
function missingAverage(found: PerPlant, given: Given): MissingNumber | null {
  const problem = allLost(found, given);
  return problem === null ? null : { shows: ["answer", "Per plant"], problem };
}
