import { plainBlock } from "../cells/blocks";
import type { Columns } from "../cells/showable";
import type { PickTally, TalliedPlant } from "../nouns/findings/pickTally";
import type { Output } from "../nouns/line";
import type { ShownOutputs } from "../nouns/shownOutputs";
import { tallyPicks } from "../questions/tallyPicks";
import { dayText } from "../words/dayText";
import { pickNoteText } from "../words/pickNote";
import { placeText } from "../words/place";
import { line } from "./figure";
import type { WorksheetFunction } from "./worksheetFunction";

const HEADER = [
  "Plant",
  "Treatment",
  "Bed",
  "Total",
  "Picks",
  "First",
  "Last",
  "Status",
  "Picked before loss",
  "Notes",
];

/** So many places stand in one cell. */
const MOST_PLACES = 10;

/** TALLYPICKS: a log of picks as one row per plant. */
export const tallyPicksFunction: WorksheetFunction<PickTally> = {
  id: "TALLYPICKS",
  parameters: [
    { name: "plants", optional: false },
    { name: "dates", optional: true },
    { name: "amounts", optional: false },
    { name: "show", optional: true },
    { name: "treatments", optional: true },
    { name: "beds", optional: true },
    { name: "all_plants", optional: true },
    { name: "unit", optional: true },
    { name: "loss_notes", optional: true },
  ],
  choices: { unit: ["g", "kg", "lb", "oz", "count", "ml", "l", "cm", "m", "in", "ft"] },
  ask: tallyPicks,
  shown: (found) => ({
    answer: null,
    lines: [],
    columns: () => columns(found),
    own: [line("left out", "count", () => found.leftOut.length)],
  }),
};

function columns(found: PickTally): Columns {
  const rows = found.plants.map((plant) => row(plant, found.yearsKnown));
  return { header: HEADER, rows, main: HEADER.indexOf("Total"), last: leftOutRow(found) };
}

function row(found: TalliedPlant, yearsKnown: boolean): readonly Output[] {
  const { plant, treatment, bed, picks, first, last, notes, picked } = found;
  const isLost = found.status.startsWith("lost");
  return [
    plant,
    treatment ?? "",
    bed ?? "",
    isLost ? "lost" : found.nothingRead ? "not recorded" : picked,
    picks,
    first === null ? "" : dayText(first, yearsKnown),
    last === null ? "" : dayText(last, yearsKnown),
    statusText(found),
    isLost ? picked : "",
    notes.map(pickNoteText).join("; "),
  ];
}

function statusText({ status, weightsMissing }: TalliedPlant): string {
  if (status === "lost-picked-later") return "lost, picked later";
  return status === "weight-missing" ? `weight missing (${weightsMissing})` : status;
}

/** The number of rows stands among the picks, where no other function would take it for a plant's amount. */
function leftOutRow({ leftOut }: PickTally): ShownOutputs {
  if (leftOut.length === 0) return plainBlock([]);
  const places = leftOut.slice(0, MOST_PLACES).map(({ place }) => placeText(place));
  const more = leftOut.length > MOST_PLACES ? [`${leftOut.length - MOST_PLACES} more`] : [];
  return plainBlock([["left out", "", "", "", leftOut.length, "", "", "", "", [...places, ...more].join(", ")]]);
}
