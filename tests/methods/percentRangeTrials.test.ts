import { describe, expect, it } from "vitest";
import { compareMeans, type Layout } from "../../src/methods/compareMeans";
import { isKnown, type Limits } from "../../src/nouns/known";
import { type RandomSource, randomSource } from "../../src/numerics/random";

describe("no change lies outside the range exactly when p < 1 − confidence", () => {
  const kinds = [
    { layout: "separate", trials: 20_000 },
    { layout: "equal unevenness", trials: 40_000 },
    { layout: "pairs", trials: 40_000 },
  ] as const;
  it.each(kinds)("$trials random trials: $layout", { timeout: 60_000 }, ({ layout, trials }) => {
    const source = randomSource(2026);
    const seen = { inside: 0, outside: 0, endless: 0 };
    for (let trial = 0; trial < trials; trial += 1) {
      const played = play(layout, source);
      if (played === null) continue;
      seen[played.place] += 1;
      seen.endless += played.endless ? 1 : 0;
      expect(played.place, played.story).toBe(played.differs ? "outside" : "inside");
    }
    // both answers and missing limits came up often, so the rule was put to the test
    expect(Math.min(seen.inside, seen.outside)).toBeGreaterThan(trials / 10);
    expect(seen.endless).toBeGreaterThan(trials / 100);
  });
});

/** One random trial: what the test says, and where no change lies; null when there is nothing to test. */
function play(layout: Layout, source: RandomSource) {
  const [usual, tried] = randomTrial(layout, source);
  const confidence = [0.8, 0.9, 0.95, 0.99][source.below(4)] ?? 0.95;
  const { pValue, change, changeRange } = compareMeans(usual, tried, { layout, confidence });
  if (!isKnown(pValue) || !isKnown(change)) return null;
  return {
    differs: pValue < 1 - confidence,
    place: placeOfNoChange(changeRange),
    endless: !isKnown(changeRange.high),
    story: `${layout} at ${confidence}: p ${pValue}, ${usual} v ${tried}`,
  };
}

function placeOfNoChange({ low, high }: Limits): "inside" | "outside" {
  return (isKnown(low) && low > 0) || (isKnown(high) && high < 0) ? "outside" : "inside";
}

/** Small groups of whole or broken amounts, few against many, with pairs that follow each other more or less. */
function randomTrial(layout: Layout, source: RandomSource): [number[], number[]] {
  const sizes = [2, 2, 3, 3, 4, 5, 6, 8, 12];
  const n = sizes[source.below(sizes.length)] ?? 2;
  const m = layout === "pairs" ? n : (sizes[source.below(sizes.length)] ?? 2);
  const spread = 0.1 + 1.5 * source.uniform();
  const gain = 0.4 + 2 * source.uniform();
  const whole = source.below(4) === 0;
  const amount = (size: number) => {
    const value = size * Math.max(0, 1 + spread * (source.uniform() + source.uniform() - 1));
    return whole ? Math.round(value) : value;
  };
  const beds = Array.from({ length: n }, () => (layout === "pairs" ? 2 + 10 * source.uniform() : 6));
  const usual = beds.map(amount);
  return [usual, Array.from({ length: m }, (_, i) => amount(gain * (beds[i] ?? 6)))];
}
