import type { LookedOver } from "../../nouns/findings/lookedOver";
import { NEEDS_A_LOOK, type Reading } from "../../nouns/reading";
import { counted } from "../../words/counted";
import { placeText } from "../../words/place";
import { readingAdvice } from "../../words/readingAdvice";
import { LISTED_KINDS, READING_LABELS } from "../../words/readingLabel";
import { readingText } from "../../words/readingText";

/** One thing that was made of a cell. */
export interface Line {
  /** The cell's address: "F60". */
  readonly cell: string;
  /** "F60", or "D49 and 3 more cells" where a name is used more often. */
  readonly where: string;
  /** What stands there, or what was read into it. */
  readonly what: string;
  readonly advice: string;
}

/** All readings of one kind. */
export interface Group {
  /** LOOKOVER's own label, and how many: "Unreadable: 3". */
  readonly heading: string;
  readonly needsLook: boolean;
  readonly lines: readonly Line[];
}

/** What LOOKOVER made of the cells, a group a kind: worst first, those that are certain last. */
export function groupsOf(found: LookedOver): readonly Group[] {
  const kinds = new Map(found.columns.map(({ column, kind }) => [column, kind]));
  return LISTED_KINDS.flatMap((kind) => {
    const readings = found.readings.filter((reading) => reading.kind === kind);
    if (readings.length === 0) return [];
    const lines = sameNames(readings).map((same) => lineOf(same, kinds.get(same[0].place.column ?? 1) ?? "amount"));
    const needsLook = NEEDS_A_LOOK.some((look) => look === kind);
    return [{ heading: `${READING_LABELS[kind]}: ${readings.length}`, needsLook, lines }];
  });
}

type Several = readonly [Reading, ...Reading[]];

/** A name spelt in an odd way in many cells is one thing to mend; anything else is a thing a cell. */
function sameNames(readings: readonly Reading[]): readonly Several[] {
  const byName = new Map<string, [Reading, ...Reading[]]>();
  for (const [at, reading] of readings.entries()) {
    const key = reading.kind === "names-alike" ? `${reading.place.column}\t${readingText(reading)}` : String(at);
    const known = byName.get(key);
    if (known === undefined) byName.set(key, [reading]);
    else known.push(reading);
  }
  return [...byName.values()];
}

function lineOf([first, ...others]: Several, kind: LookedOver["columns"][number]["kind"]): Line {
  const cell = placeText(first.place);
  const more = others.length === 0 ? "" : ` and ${counted(others.length, "more cell")}`;
  return { cell, where: `${cell}${more}`, what: readingText(first), advice: readingAdvice(first, kind) };
}
