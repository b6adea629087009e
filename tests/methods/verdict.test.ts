import { describe, expect, it } from "vitest";
import { cappedVerdict, rangeVerdict } from "../../src/methods/verdict";
import type { Known } from "../../src/nouns/known";
import type { RangeVerdict, Verdict } from "../../src/nouns/verdict";

/** METHODS 6.1, one row of its table each; L and U with missing limits as infinities. */
const CONDITIONS: Readonly<Record<RangeVerdict, (L: number, U: number, W: number) => boolean>> = {
  "up-enough": (L, _, W) => L >= W,
  "up-small": (L, U, W) => 0 < L && U < W,
  "up-unclear": (L, U, W) => 0 < L && L < W && W <= U,
  "down-enough": (_, U, W) => U <= -W,
  "down-small": (L, U, W) => U < 0 && L > -W,
  "down-unclear": (L, U, W) => L <= -W && -W < U && U < 0,
  level: (L, U, W) => -W < L && L <= 0 && 0 <= U && U < W,
  "open-up": (L, U, W) => -W < L && L <= 0 && U >= W,
  "open-down": (L, U, W) => L <= -W && 0 <= U && U < W,
  open: (L, U, W) => L <= -W && U >= W,
};

describe("rangeVerdict", () => {
  // twice as fine as the worthwhile changes, so that every border is met exactly and passed on both sides
  const ends = Array.from({ length: 81 }, (_, i) => (i - 40) / 64);
  const lows: readonly [Known, number][] = [
    [{ absent: "no-lower-limit" }, -Infinity],
    ...ends.map((e) => [e, e] as const),
  ].map(([known, end]) => [known as Known, end as number]);
  const highs: readonly [Known, number][] = [
    ...ends.map((e) => [e, e] as const),
    [{ absent: "no-upper-limit" }, Infinity],
  ].map(([known, end]) => [known as Known, end as number]);

  it.each([1 / 32, 5 / 32, 10 / 32, 1])("meets one condition and one only, for every range: worthwhile %d", (W) => {
    const seen = new Set<RangeVerdict>();
    for (const [low, L] of lows) {
      for (const [high, U] of highs) {
        if (L > U) continue;
        const met = Object.entries(CONDITIONS).filter(([, condition]) => condition(L, U, W));
        expect(met.map(([verdict]) => verdict)).toEqual([rangeVerdict(low, high, W)]);
        seen.add(rangeVerdict(low, high, W));
      }
    }
    if (W < 0.5) expect(seen.size).toBe(10);
  });
});

describe("cappedVerdict", () => {
  const capped = (range: RangeVerdict, usual: number, tried: number) => cappedVerdict(range, { usual, tried });
  const RANGES = Object.keys(CONDITIONS) as RangeVerdict[];

  it.each([
    [1, 1],
    [1, 9],
    [9, 1],
    [2, 2],
  ])("%d against %d plants are too few, whatever the range says", (usual, tried) => {
    for (const range of RANGES) expect(capped(range, usual, tried)).toBe("few");
  });

  it.each([
    [2, 3],
    [3, 2],
    [2, 50],
    [3, 3],
    [3, 8],
  ])("%d against %d plants lean at most", (usual, tried) => {
    for (const range of RANGES) expect(capped(range, usual, tried)).toBe(leaning(range));
  });

  it("four against four plants speak for themselves", () => {
    for (const range of RANGES) expect(capped(range, 4, 4)).toBe(range);
  });

  it.each([
    [1, "few"],
    [3, "few"],
    [4, "leaning"],
    [5, "leaning"],
    [6, "free"],
  ])("%d pairs: %s", (pairs, expected) => {
    for (const range of RANGES) {
      const whole: Verdict = expected === "few" ? "few" : expected === "leaning" ? leaning(range) : range;
      expect(cappedVerdict(range, { pairs })).toBe(whole);
    }
  });

  it("without a range: too few for one plant, else no answer", () => {
    expect(cappedVerdict({ absent: "one-plant" }, { usual: 1, tried: 6 })).toBe("few");
    expect(cappedVerdict({ absent: "all-equal" }, { usual: 5, tried: 6 })).toBe("none");
    expect(cappedVerdict({ absent: "usual-not-above-zero" }, { pairs: 2 })).toBe("none");
  });
});

function leaning(range: RangeVerdict): Verdict {
  if (range.startsWith("up-")) return "leaning-up";
  return range.startsWith("down-") ? "leaning-down" : range;
}
