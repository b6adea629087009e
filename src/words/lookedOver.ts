import type { Told } from "../nouns/explanation";
import type { LookedOver } from "../nouns/findings/lookedOver";
import type { NEEDS_A_LOOK, Reading } from "../nouns/reading";
import { counted } from "./counted";
import { listText } from "./list";
import { placeText } from "./place";
import { plainNumber } from "./plainNumber";
import { sentences } from "./sentences";

/** LOOKOVER's finding as a cell tells it (METHODS 9.1). */
export function tellLookedOver(found: LookedOver): Told {
  return { finding: () => sentences(`${lookedOverText(found)}.`, firstPlaces(found)), say: () => "" };
}

/** "331 cells read, 9 need a look": what LOOKOVER shows in its cell. */
export function lookedOverText({ cells, needLook }: LookedOver): string {
  if (cells === 0) return "No answer: nothing in these cells";
  const many = needLook === 0 ? "none" : plainNumber(needLook);
  const look = needLook === 1 ? "1 needs a look" : `${many} need a look`;
  return `${counted(cells, "cell")} read, ${look}`;
}

/** How many cells are named. */
const FIRST = 3;

/** The first three cells that need a look, in the sheet's order, each with what it looks like. */
function firstPlaces({ readings }: LookedOver): string {
  const looks = readings.filter((reading) => reading.kind in LOOKS_LIKE);
  const named = looks.filter((reading, at) => looks.findIndex((one) => isSame(one, reading)) === at).slice(0, FIRST);
  if (named.length === 0) return "";
  const texts = named.map((reading) => `${placeText(reading.place)} (${LOOKS_LIKE[reading.kind as Look]})`);
  return `First look at ${listText(texts)}.`;
}

function isSame(one: Reading, other: Reading): boolean {
  return one.place.row === other.place.row && one.place.column === other.place.column;
}

type Look = (typeof NEEDS_A_LOOK)[number];

const LOOKS_LIKE: Readonly<Record<Look, string>> = {
  unreadable: "cannot be read",
  "possible-total": "a total?",
  "possible-double": "entered twice?",
  "excel-date": "a date?",
  "odd-size": "unusual size",
  error: "an error",
  "not-recorded": "nothing there",
  "names-alike": "like another name",
  "name-once": "used once",
};
