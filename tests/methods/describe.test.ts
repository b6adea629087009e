import { expect, it } from "vitest";
import { describe as described } from "../../src/methods/describe";

it("three plants: average and spread", () => {
  expect(described([6, 2, 4])).toMatchObject({
    mean: 4,
    deviation: 2,
    unevenness: 0.5,
  });
});

it("one plant has an average and no unevenness", () => {
  const alone = { absent: "one-plant-only" };
  expect(described([3])).toMatchObject({ mean: 3, deviation: alone, unevenness: alone });
});

it("no plant has nothing", () => {
  const none = { absent: "no-usable-plants" };
  const { summary, ...figures } = described([]);
  expect(summary.n).toBe(0);
  for (const figure of Object.values(figures)) expect(figure).toEqual(none);
});

it("plants that bore nothing have a spread of 0 and no share of their average", () => {
  expect(described([0, 0])).toMatchObject({ mean: 0, deviation: 0, unevenness: { absent: "average-zero" } });
});
