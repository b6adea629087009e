import type { PickNote } from "../nouns/findings/pickTally";
import { counted } from "./counted";
import { listText } from "./list";
import { placeText } from "./place";
import { plainNumber } from "./plainNumber";
import { shortLabel } from "./shortLabel";

/** One note of a tally's row, in a few words and with its cell: "F219 entered twice (like F218)". */
export function pickNoteText(note: PickNote): string {
  switch (note.note) {
    case "lost":
      return `${placeText(note.place)} says “${shortLabel(note.text)}”`;
    case "picked-later":
      return note.amount > 0
        ? `${plainNumber(note.amount, 6)} of it is dated after the loss`
        : "a pick is dated after the loss";
    case "weight-missing":
      return note.why === "empty" ? `${placeText(note.place)} is empty` : `${quoted(note)} is no amount`;
    case "entered-twice":
      return `${placeText(note.place)} entered twice (like ${placeText(note.like)}), counted twice`;
    case "far-above":
      return `${placeText(note.place)} is far above the rest: ${plainNumber(note.amount, 6)}`;
    case "read-as":
      return `${quoted(note)} read as ${plainNumber(note.amount, 6)}`;
    case "date-unclear":
      return note.text === "" ? `${placeText(note.place)} has no date` : `date unclear: ${quoted(note)}`;
    case "two-names":
      return `${note.of}: ${listText(note.names.map(({ name, rows }) => `${shortLabel(name)} in ${counted(rows, "row")}`))}`;
    case "listed-otherwise":
      return `${note.of}: listed as ${shortLabel(note.listed)}, in the log ${shortLabel(note.logged)}`;
    case "not-listed":
      return "not in the list of all plants";
  }
}

function quoted({ place, text }: Extract<PickNote, { text: string }>): string {
  return `${placeText(place)} “${shortLabel(text)}”`;
}
