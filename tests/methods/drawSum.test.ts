import { expect, it } from "vitest";
import { drawSum, flipSum } from "../../src/methods/drawSum";
import type { RandomSource } from "../../src/numerics/random";

/** A source whose `below` gives the answers in turn and takes note of what it was asked. */
function scripted(answers: readonly number[]): { readonly source: RandomSource; readonly asked: number[] } {
  const asked: number[] = [];
  const unasked = () => expect.fail("only below() is to be drawn from");
  const below = (n: number) => answers[asked.push(n) - 1] ?? expect.fail("more draws than places");
  return { source: { next32: unasked, uniform: unasked, below }, asked };
}

/** Every way to answer draws from below these numbers. */
function allAnswers(sizes: readonly number[]): readonly (readonly number[])[] {
  return sizes.reduce<readonly (readonly number[])[]>(
    (begun, size) => begun.flatMap((answers) => Array.from({ length: size }, (_, answer) => [...answers, answer])),
    [[]],
  );
}

function tally(sums: readonly number[]): readonly (readonly [number, number])[] {
  const counts = new Map<number, number>();
  for (const sum of sums) counts.set(sum, (counts.get(sum) ?? 0) + 1);
  return [...counts].sort(([left], [right]) => left - right);
}

// sums of different powers of 2 tell which were drawn: 7 is 1 + 2 + 4
it.each([
  ["in order", [1, 2, 4, 8, 16]],
  ["as an earlier draw left it", [16, 2, 1, 8, 4]],
])("every three of five are drawn in 3! of the 60 ways the lot can fall: pool %s", (_order, pool) => {
  const sums = allAnswers([5, 4, 3]).map((answers) => drawSum([...pool], 3, scripted(answers).source));
  expect(tally(sums)).toEqual([7, 11, 13, 14, 19, 21, 22, 25, 26, 28].map((sum) => [sum, 6]));
});

it("draws no value twice, and leaves all of them in the pool", () => {
  const pool = [10, 20, 30, 40];
  const { source, asked } = scripted([3, 2]);
  // 40 changes places with 10, which the second draw then finds at the end
  expect(drawSum(pool, 2, source)).toBe(50);
  expect(asked).toEqual([4, 3]);
  expect(pool.toSorted((left, right) => left - right)).toEqual([10, 20, 30, 40]);
});

it("draws none, and all", () => {
  expect(drawSum([3, 5], 0, scripted([]).source)).toBe(0);
  expect(drawSum([3, 5, 9], 3, scripted([2, 1, 0]).source)).toBe(17);
});

it("flipSum takes one coin a value, and every choice of signs comes of one way the coins can fall", () => {
  const flips = allAnswers([2, 2, 2]).map((answers) => {
    const { source, asked } = scripted(answers);
    const sum = flipSum([1, 2, 4], source);
    expect(asked).toEqual([2, 2, 2]);
    return sum;
  });
  expect(tally(flips)).toEqual([-7, -5, -3, -1, 1, 3, 5, 7].map((sum) => [sum, 1]));
});
