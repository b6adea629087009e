import { type Cell, isEmpty, isErrorCell } from "../nouns/cell";
import { dayOf } from "../nouns/day";
import type { Remark } from "../nouns/reading";
import { cellText } from "./cellText";
import { isDateSerial } from "./isDateSerial";
import { labelKey } from "./labelKey";
import { namesAlike } from "./namesAlike";
import type { Noted } from "./noted";

/** A column of names as read. */
export interface LookedNames {
  /** What names that mean the same have in common; null where there is none. */
  readonly keys: readonly (string | null)[];
  readonly noted: readonly Noted[];
}

/** One spelling of a name and how many cells hold it. */
interface Spelling {
  readonly text: string;
  readonly key: string;
  uses: number;
  /** What there is to note on each cell that holds it. */
  readonly remarks: Remark[];
}

/** So many different names are compared with each other; more are no treatments. */
const MOST_NAMES = 300;

/**
 * Reads a column of names and notes those spelt in two ways, those nearly alike (`namesAlike`), and in a column of
 * names that come up again those used once. The name used less is noted; of two used as often, the later one.
 *
 * @param skip rows that are not looked at
 */
export function lookAtNames(cells: readonly Cell[], skip: ReadonlySet<number>): LookedNames {
  const spellings = new Map<string, Spelling>();
  const rows = cells.map((cell, row) => (skip.has(row) ? null : spellingOf(cell, spellings)));
  noteNames(namesOf([...spellings.values()]));
  const noted: Noted[] = [];
  for (const [row, spelling] of rows.entries()) {
    const found = spelling === null ? otherRemarks(cells[row] ?? null) : spelling.remarks;
    if (!skip.has(row)) noted.push(...found.map((remark) => ({ row, remark })));
  }
  return { keys: rows.map((spelling) => spelling?.key ?? null), noted };
}

function spellingOf(cell: Cell, spellings: Map<string, Spelling>): Spelling | null {
  if (isEmpty(cell) || isErrorCell(cell) || isDateAmongNames(cell)) return null;
  const text = cellText(cell);
  const spelling = spellings.get(text) ?? { text, key: labelKey(text, "plant"), uses: 0, remarks: [] };
  spelling.uses++;
  spellings.set(text, spelling);
  return spelling;
}

/** "1-2" typed as a name may have become a date. */
function isDateAmongNames(cell: Cell): cell is number {
  return typeof cell === "number" && isDateSerial(cell);
}

function otherRemarks(cell: Cell): readonly Remark[] {
  if (isDateAmongNames(cell)) return [{ kind: "excel-date", day: dayOf(cell) }];
  return isEmpty(cell) ? [{ kind: "not-recorded", why: "empty" }] : [{ kind: "error" }];
}

/** A name in all its spellings; the first is the one used most. */
interface Name {
  readonly key: string;
  readonly spellings: readonly Spelling[];
  readonly uses: number;
}

function noteNames(names: readonly Name[]): void {
  for (const { spellings } of names) noteOtherSpellings(spellings);
  const once = names.filter(({ uses }) => uses === 1);
  const uses = names.reduce((sum, name) => sum + name.uses, 0);
  const comeAgain = 2 * once.length < names.length && uses >= 2 * names.length;
  for (const [name, like] of alikeNames(names)) {
    for (const spelling of name.spellings) spelling.remarks.push(alike(spelling, like));
  }
  if (comeAgain)
    for (const { spellings } of once) for (const { remarks } of spellings) remarks.push({ kind: "name-once" });
}

function namesOf(spellings: readonly Spelling[]): readonly Name[] {
  const byKey = new Map<string, Spelling[]>();
  for (const spelling of spellings) {
    const same = byKey.get(spelling.key) ?? [];
    same.push(spelling);
    byKey.set(spelling.key, same);
  }
  return [...byKey].map(([key, same]) => ({
    key,
    spellings: same.sort((one, other) => other.uses - one.uses),
    uses: same.reduce((sum, { uses }) => sum + uses, 0),
  }));
}

function noteOtherSpellings([usual, ...others]: readonly Spelling[]): void {
  if (usual === undefined) return;
  for (const other of others) other.remarks.push(alike(other, usual));
}

function alike(spelling: Spelling, like: Spelling): Remark {
  const { uses, key } = spelling;
  return { kind: "names-alike", like: like.text.trim(), uses, likeUses: like.uses, same: key === like.key };
}

/** Each name that is nearly like one used more, with that one's usual spelling. */
function alikeNames(names: readonly Name[]): readonly (readonly [Name, Spelling])[] {
  if (names.length > MOST_NAMES) return [];
  const byUse = [...names].sort((one, other) => other.uses - one.uses);
  return byUse.flatMap((name, at) => {
    const like = byUse.slice(0, at).find(({ key }) => namesAlike(key, name.key));
    const [usual] = like?.spellings ?? [];
    return usual === undefined ? [] : [[name, usual] as const];
  });
}
