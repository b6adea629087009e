import { expect, it } from "vitest";
import type { Plant } from "../../src/nouns/sample";
import { plantCautions } from "../../src/questions/plantCautions";
import { sample } from "./range";

const plants = (count: number): readonly Plant[] =>
  sample(
    "usual",
    Array.from({ length: count }, (_, at) => 20 + at),
  ).entries.flatMap((entry) => (entry.kind === "value" ? [{ value: entry.value, place: entry.place }] : []));

// by luck alone all four of four pairs lean one way in 2 of 2⁴ trials, and all five in 2 of 2⁵
it.each([
  [4, 2 / 16],
  [5, 2 / 32],
])("C01 for %d pairs counts pairs", (count, mostOneSided) => {
  const cautions = plantCautions({ usual: plants(count), tried: plants(count), how: "pairs", g: null });
  expect(cautions).toEqual([{ caution: "C01", plants: [count, count], pairs: true, mostOneSided }]);
});

// 3 plants are chosen from 8 in 56 ways; the highest and the lowest 3 are 2 of them
it("C01 for separate plants counts those of each treatment", () => {
  const cautions = plantCautions({ usual: plants(3), tried: plants(5), how: "separate", g: null });
  expect(cautions).toEqual([{ caution: "C01", plants: [3, 5], pairs: false, mostOneSided: 2 / 56 }]);
});

it("four separate plants of each, and six pairs, are not few", () => {
  expect(plantCautions({ usual: plants(4), tried: plants(4), how: "separate", g: null })).toEqual([]);
  expect(plantCautions({ usual: plants(6), tried: plants(6), how: "pairs", g: null })).toEqual([]);
});
