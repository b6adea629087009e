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
