import { expect, it } from "vitest";
import { unevenPlants } from "../../../src/pane/luck/unevenPlants";
import { near } from "../../near";

it.each([
  [6, 0.05],
  [8, 0.25],
  [40, 0.4],
])("%d plants differ by %d, to the rounding of ten grams", (count, share) => {
  const plants = unevenPlants(count, share, 18);
  const mean = plants.reduce((sum, grams) => sum + grams, 0) / count;
  const deviation = Math.sqrt(plants.reduce((sum, grams) => sum + (grams - mean) ** 2, 0) / (count - 1));
  near("unevenness", deviation / mean, share, { absolute: 0.002 });
  near("average", mean, 3000, { absolute: 5 });
  expect(Math.min(...plants)).toBeGreaterThan(0);
});

it("the number settles the order, and nothing else", () => {
  const [one, other] = [unevenPlants(8, 0.25, 18), unevenPlants(8, 0.25, 19)];
  expect(unevenPlants(8, 0.25, 18)).toEqual(one);
  expect(other).not.toEqual(one);
  expect([...other].sort()).toEqual([...one].sort());
});
