import type { Told } from "../nouns/explanation";
import type { LookedOver } from "../nouns/findings/lookedOver";
import type { NEEDS_A_LOOK, ReadingKind } from "../nouns/reading";
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
  const named = new Map<string, string>();
  for (const { place, kind } of readings) {
    if (named.size === FIRST) break;
    const [where, like] = [placeText(place), looksLike[kind]];
    if (like !== undefined && !named.has(where)) named.set(where, `${where} (${like})`);
  }
  return named.size === 0 ? "" : `First look at ${listText([...named.values()])}.`;
}

const needsALook: Readonly<Record<(typeof NEEDS_A_LOOK)[number], string>> = {
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

const looksLike: Readonly<Partial<Record<ReadingKind, string>>> = needsALook;
