import type { Explanation } from "../nouns/explanation";
import type { PickTally } from "../nouns/findings/pickTally";
import { amountText } from "./amount";
import { counted } from "./counted";
import { listText } from "./list";
import { lookOutFor } from "./lookOutFor";
import { pickNoteText } from "./pickNote";
import { plantCounts, tellPickTally } from "./pickTally";
import { placeText } from "./place";
import { shortLabel } from "./shortLabel";

/** So many places stand in one sentence. */
const MOST_PLACES = 3;

/** So many notes are worth a line beside the table. */
const MOST_NOTES = 12;

/** TALLYPICKS' finding in plain words (METHODS 9.1). */
export function explainPickTally(found: PickTally): Explanation {
  const told = tellPickTally(found);
  return {
    finding: told.finding(),
    say: told.say(),
    compared: compared(found),
    luck: [],
    lookOutFor: lookOutFor(found.cautions()),
    next: next(found),
    workings: workings(found),
  };
}

function compared({ plants, unit }: PickTally): string {
  const total = plants.reduce((sum, { picked }) => sum + picked, 0);
  const picks = plants.reduce((sum, plant) => sum + plant.picks, 0);
  return `${counted(picks, "pick")} gave ${amountText(total, unit)} in all. Each plant counts once, as its total.`;
}

function next(found: PickTally): readonly string[] {
  const { lacking } = plantCounts(found);
  const use = found.withTreatments
    ? "Then give Total and Treatment to COMPAREMANY, side by side."
    : "To see how the plants differ, give Total to UNEVENNESS.";
  return lacking === 0 ? [use] : ["A plant with a weight missing has at least its total. Look for the weight.", use];
}

function workings(found: PickTally): readonly string[] {
  const { leftOut, plants } = found;
  const places = leftOut.slice(0, MOST_PLACES).map(({ place }) => placeText(place));
  const more = leftOut.length > MOST_PLACES ? [`${leftOut.length - MOST_PLACES} more`] : [];
  const out = leftOut.length === 0 ? [] : [`Left out: ${listText([...places, ...more])}.`];
  const noted = plants.flatMap(({ plant, notes }) =>
    notes.filter(({ note }) => note !== "read-as").map((note) => `${shortLabel(plant)}: ${pickNoteText(note)}.`),
  );
  return [...out, ...noted.slice(0, MOST_NOTES), "All notes stand in the table's last column."];
}
