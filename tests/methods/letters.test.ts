import fc from "fast-check";
import { expect, it } from "vitest";
import { type Differing, letters } from "../../src/methods/letters";

it("nothing shown to differ: one letter for all", () => {
  expect(letters(3, [])).toEqual(["a", "a", "a"]);
});

it("PlantGrowth (R's multcomp): highest and lowest differ, the middle one shares with both", () => {
  expect(letters(3, [[0, 2]])).toEqual(["a", "ab", "b"]);
});

it("Marlpit Corner in beds (METHODS section 11): straw above the two lowest", () => {
  expect(
    letters(4, [
      [0, 2],
      [0, 3],
    ]),
  ).toEqual(["a", "ab", "b", "b"]);
});

const trials = fc.integer({ min: 2, max: 6 }).chain((count) => {
  const pairs = Array.from({ length: count }, (_, one) =>
    Array.from({ length: count - one - 1 }, (_unused, other): Differing => [one, one + 1 + other]),
  ).flat();
  return fc.tuple(fc.constant(count), fc.subarray(pairs));
});

it("two treatments share a letter exactly when they are not shown to differ", () => {
  fc.assert(
    fc.property(trials, ([count, differing]) => {
      const given = letters(count, differing);
      for (let one = 0; one < count; one += 1) {
        for (let other = one + 1; other < count; other += 1) {
          const share = [...(given[one] ?? "")].some((letter) => given[other]?.includes(letter));
          expect(share).toBe(!differing.some(([left, right]) => left === one && right === other));
        }
      }
    }),
    { numRuns: 2000 },
  );
});

it("no letter could be left out: each is some pair's only one, or some treatment's", () => {
  fc.assert(
    fc.property(trials, ([count, differing]) => {
      const given = letters(count, differing);
      for (const letter of new Set(given.join(""))) {
        const rest = given.map((text) => text.replaceAll(letter, ""));
        const kept = given.every((text, one) =>
          given.every((other, at) => {
            const shared = (left: string, right: string) => [...left].some((mark) => right.includes(mark));
            return one === at ? rest[one] !== "" : shared(text, other) === shared(rest[one] ?? "", rest[at] ?? "");
          }),
        );
        // a letter that holds nothing that a larger one does not is never given
        const holders = given.flatMap((text, at) => (text.includes(letter) ? [at] : []));
        const inside = [...new Set(given.join(""))].some(
          (other) => other !== letter && holders.every((at) => given[at]?.includes(other)),
        );
        expect(inside && kept).toBe(false);
      }
    }),
    { numRuns: 1000 },
  );
});

/** All pairs among so many treatments. */
function pairsOf(count: number): readonly Differing[] {
  return Array.from({ length: count }, (_, one) =>
    Array.from({ length: count - one - 1 }, (_unused, further): Differing => [one, one + 1 + further]),
  ).flat();
}

/** Every choice of pairs among so many treatments that may be shown to differ. */
function* everyTrial(count: number): Generator<readonly Differing[]> {
  const pairs = pairsOf(count);
  for (let choice = 0; choice < 2 ** pairs.length; choice += 1)
    yield pairs.filter((_, at) => Math.floor(choice / 2 ** at) % 2 === 1);
}

it.each([2, 3, 4, 5, 6])(
  "of %d treatments, whatever differs, exactly the others share a letter; a is the highest",
  (count) => {
    const pairs = pairsOf(count);
    for (const differing of everyTrial(count)) {
      const given = letters(count, differing);
      const apart = pairs.filter(
        ([one, other]) => ![...(given[one] ?? "")].some((mark) => given[other]?.includes(mark)),
      );
      const agreed =
        String(apart) === String(differing) && given[0]?.startsWith("a") && given.every((text) => text !== "");
      if (!agreed) expect.fail(`${differing.join(" and ")} differ, but the letters are ${given.join(", ")}`);
    }
  },
);

/** Sets of treatments as the bits of a number. */
type Bits = number;

/** The fewest letters that do, found by trying: each pair not shown to differ, and each treatment, needs one that holds it. */
function fewestLetters(count: number, differing: readonly Differing[]): number {
  const apart = differing.map(([one, other]) => 2 ** one + 2 ** other);
  const allowed = Array.from({ length: 2 ** count - 1 }, (_, at): Bits => at + 1).filter((set) =>
    apart.every((pair) => (set & pair) !== pair),
  );
  const largest = allowed.filter((set) => !allowed.some((other) => other !== set && (other & set) === set));
  const singles = Array.from({ length: count }, (_, at): Bits => 2 ** at);
  const pairs = pairsOf(count).map(([one, other]): Bits => 2 ** one + 2 ** other);
  const wanted = [...singles, ...pairs.filter((pair) => !apart.includes(pair))];
  const cover = (left: readonly Bits[], letter: number): number => {
    const [first] = left;
    if (first === undefined) return letter;
    const holders = largest.filter((set) => (set & first) === first);
    return Math.min(
      ...holders.map((set) =>
        cover(
          left.filter((need) => (need & set) !== need),
          letter + 1,
        ),
      ),
    );
  };
  return cover(wanted.toReversed(), 0);
}

it.each([2, 3, 4, 5, 6])("of %d treatments, whatever differs, no fewer letters would do", (count) => {
  for (const differing of everyTrial(count)) {
    const used = new Set(letters(count, differing).join("")).size;
    const fewest = fewestLetters(count, differing);
    if (used !== fewest) expect.fail(`${differing.join(" and ")} differ: ${used} letters, but ${fewest} would do`);
  }
});

it("three pairs that differ, each with all others in common: four letters where all common groups would be eight", () => {
  const given = letters(6, [
    [0, 5],
    [1, 4],
    [2, 3],
  ]);
  expect(new Set(given.join("")).size).toBe(4);
});

it("twenty treatments in a row, neighbours not shown to differ: nineteen letters", () => {
  const differing = pairsOf(20).filter(([one, other]) => other - one > 1);
  expect(new Set(letters(20, differing).join("")).size).toBe(19);
});

it("letters are given in the order of the treatments that share them, not of the pairs that differ", () => {
  // the highest is alike with each of the others: a with the second, b with the third
  expect(letters(3, [[1, 2]])).toEqual(["ab", "a", "b"]);
});

it("after z come a1 to z1, then a2", () => {
  const given = letters(54, pairsOf(54));
  const alphabet = "abcdefghijklmnopqrstuvwxyz".split("");
  expect(given).toEqual([...alphabet, ...alphabet.map((letter) => `${letter}1`), "a2", "b2"]);
});
