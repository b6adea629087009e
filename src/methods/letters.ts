/** Two treatments, by their places in the order of averages, that are shown to differ. */
export type Differing = readonly [one: number, other: number];

/**
 * Letters for treatments in the order of their averages, highest first: two share a letter exactly when they are not
 * shown to differ. The highest has an a; a letter whose sharing others show already is not given.
 *
 * @param count how many treatments
 *
 * Source: insert and absorb, H.-P. Piepho (2004), Journal of Computational and Graphical Statistics 13, 456–466.
 */
export function letters(count: number, differing: readonly Differing[]): readonly string[] {
  let groups: readonly (readonly number[])[] = [Array.from({ length: count }, (_, at) => at)];
  for (const [one, other] of differing) {
    const split = groups.flatMap((group) =>
      group.includes(one) && group.includes(other) ? [without(group, one), without(group, other)] : [group],
    );
    groups = absorbed(split);
  }
  const ordered = needed(groups.toSorted((left, right) => compare(left, right)));
  return Array.from({ length: count }, (_, at) =>
    ordered.map((group, letter) => (group.includes(at) ? letterOf(letter) : "")).join(""),
  );
}

function without(group: readonly number[], treatment: number): readonly number[] {
  return group.filter((one) => one !== treatment);
}

/** Drops groups that another one holds. No two are alike: they come from groups of which none held another. */
function absorbed(groups: readonly (readonly number[])[]): readonly (readonly number[])[] {
  return groups.filter((group) => !groups.some((other) => other.length > group.length && holds(other, group)));
}

function holds(outer: readonly number[], inner: readonly number[]): boolean {
  return inner.every((treatment) => outer.includes(treatment));
}

/** Drops groups, the last first, whose every pair (and every treatment) other groups hold too: no letter is wasted. */
function needed(groups: readonly (readonly number[])[]): readonly (readonly number[])[] {
  return groups.reduceRight((kept, group) => {
    const others = kept.filter((other) => other !== group);
    const shared = (one: number, other: number) => others.some((held) => held.includes(one) && held.includes(other));
    return group.every((one) => group.every((other) => shared(one, other))) ? others : kept;
  }, groups);
}

/** By their first treatments, then the next; as neither holds the other, they part before either ends. */
function compare(left: readonly number[], right: readonly number[]): number {
  const at = left.findIndex((treatment, index) => treatment !== right[index]);
  return (left[at] as number) - (right[at] as number);
}

/** a … z, then a1, b1 … */
function letterOf(at: number): string {
  const letter = String.fromCharCode(97 + (at % 26));
  return at < 26 ? letter : `${letter}${Math.floor(at / 26)}`;
}
