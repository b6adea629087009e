import { expect, it } from "vitest";
import { randomSource } from "../../../src/numerics/random";
import reference from "../../reference/plantDraws.json";
import { drawPlant, type PlantKind } from "./drawPlant";

const DRAWS = 40_000;
const { shares, weights, counted } = reference.cases;

/** As many as fall short by chance once in ten thousand, in standard errors. */
const FAR = 3.9;

it.each(weights)(
  "$kind plants of $mean, $unevenness uneven, stand below R's quantiles as often as they should",
  (one) => {
    const source = randomSource(11);
    const plants = Array.from({ length: DRAWS }, () => drawPlant({ ...one, kind: one.kind as PlantKind }, source));
    for (const [at, share] of shares.entries()) {
      const below = plants.filter((plant) => plant <= (one.quantiles[at] ?? Number.NaN)).length / DRAWS;
      expect(Math.abs(below - share) / Math.sqrt((share * (1 - share)) / DRAWS)).toBeLessThan(FAR);
    }
  },
);

it.each(counted)("counts of $mean, $unevenness uneven, stand at or below each count as often as R says", (one) => {
  const source = randomSource(12);
  const plants = Array.from({ length: DRAWS }, () => drawPlant({ ...one, kind: "counts" }, source));
  for (const [at, share] of one.below.entries()) {
    const below = plants.filter((plant) => plant <= (one.counts[at] ?? Number.NaN)).length / DRAWS;
    expect(Math.abs(below - share) * Math.sqrt(DRAWS)).toBeLessThan(FAR * Math.sqrt(share * (1 - share)) + 0.01);
  }
});

it("the same start gives the same plants", () => {
  const [one, other] = [randomSource(5), randomSource(5)];
  const plants = { kind: "gamma", mean: 1000, unevenness: 0.3 } as const;
  expect(drawPlant(plants, one)).toBe(drawPlant(plants, other));
});
