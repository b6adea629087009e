/** A name and how many rows of the owner hold it. */
export interface NameCount {
  readonly name: number;
  readonly rows: number;
}

/** The names that each owner's rows hold. */
export interface OwnerNames {
  /** The commonest name of each owner, of several the one that comes first; −1 where no row names one. */
  readonly names: Int32Array;
  /** Owners with more than one name: all of theirs, the commonest first. */
  readonly several: ReadonlyMap<number, readonly NameCount[]>;
}

/**
 * Which name each owner has, where rows may disagree.
 *
 * @param owners one number a row, −1 for a row of nobody
 * @param names one number a row, −1 for none
 */
export function commonerNames(owners: Int32Array, names: Int32Array, ownerCount: number): OwnerNames {
  const first = { names: new Int32Array(ownerCount).fill(-1), rows: new Int32Array(ownerCount) };
  const others = new Map<number, Map<number, number>>();
  for (const [row, owner] of owners.entries()) {
    const name = names[row] ?? -1;
    if (owner >= 0 && name >= 0 && !isFirst(first, owner, name)) countOther(others, owner, name);
  }
  const several = new Map(
    [...others].map(([owner, counts]) => {
      const all = [[first.names[owner] ?? -1, first.rows[owner] ?? 0] as const, ...counts];
      return [owner, byRows(all.map(([name, rows]) => ({ name, rows })))] as const;
    }),
  );
  for (const [owner, [commonest]] of several) first.names[owner] = commonest?.name ?? -1;
  return { names: first.names, several };
}

/** Whether a name is the first of its owner; counts it if so. */
function isFirst(first: { names: Int32Array; rows: Int32Array }, owner: number, name: number): boolean {
  const known = first.names[owner] ?? -1;
  if (known >= 0 && known !== name) return false;
  first.names[owner] = name;
  first.rows[owner] = (first.rows[owner] ?? 0) + 1;
  return true;
}

function countOther(others: Map<number, Map<number, number>>, owner: number, name: number): void {
  const counts = others.get(owner) ?? new Map<number, number>();
  counts.set(name, (counts.get(name) ?? 0) + 1);
  others.set(owner, counts);
}

/** Most rows first; equal ones stay in order of appearance. */
function byRows(counts: readonly NameCount[]): readonly NameCount[] {
  return [...counts].sort((one, other) => other.rows - one.rows);
}
