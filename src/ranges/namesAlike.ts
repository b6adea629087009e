/** Words that make another treatment of a name: "Straw" is not like "No straw" or "Straw and manure". */
const OTHERS = new Set(["no", "non", "not", "without", "and", "with", "plus"]);

/** Longer names are compared by their letters alone. */
const LONGEST = 40;

/**
 * Whether two names that are not the same may mean the same (METHODS 3): equal but for spaces and marks ("wood chip"),
 * one a part of the other by whole words ("bare", "bare soil"), or a slip of the pen apart: one letter added, left out,
 * changed or swapped from four letters on, two from eight on. Their digits must agree, and for a slip the letters that
 * stand alone: "B1-1" is not like "B1-2", nor "Bed A" like "Bed B".
 *
 * @param one name in lower case with single spaces, as `labelKey` gives it
 *
 * Source of the distance: Damerau (1964), Communications of the ACM 7(3), 171–176, in its restricted form.
 */
export function namesAlike(one: string, other: string): boolean {
  if (digitsOf(one) !== digitsOf(other)) return false;
  const [letters, others] = [lettersOf(one), lettersOf(other)];
  if (letters === others) return letters !== "";
  if (one.length > LONGEST || other.length > LONGEST) return false;
  if (isPart(one, other) || isPart(other, one)) return true;
  return loneLettersOf(one) === loneLettersOf(other) && isSlip(letters, others);
}

function digitsOf(name: string): string {
  return (name.match(/\p{N}+/gu) ?? []).join(" ");
}

function loneLettersOf(name: string): string {
  return (name.match(/(?<![\p{L}\p{N}])\p{L}(?![\p{L}\p{N}])/gu) ?? []).join(" ");
}

function lettersOf(name: string): string {
  return name.replace(/[^\p{L}\p{N}]/gu, "");
}

/** Every word of the part is in the whole, and the others are none that make it another thing. */
function isPart(part: string, whole: string): boolean {
  const [few, all] = [wordsOf(part), wordsOf(whole)];
  if (few.length === 0 || few.length >= all.length || /[+&]/.test(whole)) return false;
  const rest = all.filter((word) => !few.includes(word));
  return few.every((word) => all.includes(word)) && !rest.some((word) => OTHERS.has(word));
}

function wordsOf(name: string): readonly string[] {
  return name.match(/[\p{L}\p{N}]+/gu) ?? [];
}

function isSlip(one: string, other: string): boolean {
  const shorter = Math.min(...[one, other].map((name) => name.replace(/\p{N}/gu, "").length));
  if (shorter < 4) return false;
  const most = shorter < 8 ? 1 : 2;
  return Math.abs(one.length - other.length) <= most && distance(one, other) <= most;
}

/** Letters added, left out, changed, or swapped with their neighbour. */
function distance(one: string, other: string): number {
  const first = Array.from({ length: other.length + 1 }, (_, at) => at);
  const start: Rows = { before: [], last: first };
  const { last } = Array.from({ length: one.length }).reduce<Rows>(
    (rows, _, at) => ({ before: rows.last, last: nextRow({ one, other, at }, rows) }),
    start,
  );
  return last[other.length] ?? 0;
}

/** The two rows of the table of distances that the next one is worked out from. */
interface Rows {
  readonly before: readonly number[];
  readonly last: readonly number[];
}

/** The distances of one's first letters, up to and with the one at `at`, from each beginning of the other name. */
function nextRow({ one, other, at }: { one: string; other: string; at: number }, { before, last }: Rows): number[] {
  const next = [at + 1];
  for (let to = 1; to <= other.length; to++) {
    const change = (last[to - 1] ?? 0) + (one[at] === other[to - 1] ? 0 : 1);
    const swapped = one[at] === other[to - 2] && one[at - 1] === other[to - 1];
    const swap = swapped ? (before[to - 2] ?? 0) + 1 : change;
    next.push(Math.min((last[to] ?? 0) + 1, (next[to - 1] ?? 0) + 1, change, swap));
  }
  return next;
}
