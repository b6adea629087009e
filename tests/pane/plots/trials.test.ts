// @vitest-environment jsdom
import { expect, it } from "vitest";
import { trialsPicture } from "../../../src/pane/plots/trials";
import { threeTrials } from "./seasons";
import { svgText } from "./svgText";

it("a dot a crop, the common change with its range below, as approved", async () => {
  await expect(svgText(trialsPicture(threeTrials))).toMatchFileSnapshot("approved/many-trials.txt");
});

it("dots stand where their changes are: +50 % twice and a half as far from none as +20 %", () => {
  const picture = trialsPicture(threeTrials);
  const base = picture.marks.find(({ look }) => look === "base");
  const none = base?.mark === "line" ? (base.points[0]?.[0] ?? 0) : 0;
  const far = picture.spots.map(({ at }) => at[0] - none);
  expect((far[0] ?? 0) / (far[1] ?? 1)).toBeCloseTo(2.5, 1);
  expect((far[2] ?? 0) / (far[1] ?? 1)).toBeCloseTo(-0.5, 1);
});

it("the band holds the changes too small to matter, either way", () => {
  const picture = trialsPicture(threeTrials);
  const band = picture.marks.find(({ look }) => look === "band");
  const common = picture.marks.find(({ look }) => look === "average new");
  const base = picture.marks.find(({ look }) => look === "base");
  if (band?.mark !== "box" || common?.mark !== "line" || base?.mark !== "line") throw new Error("no marks");
  const [none, mean] = [base, common].map(({ points }) => points[0]?.[0] ?? 0) as [number, number];
  expect((band.to[0] - none) / (mean - none)).toBeCloseTo(0.1 / 0.18, 1);
  expect(none - band.from[0]).toBeCloseTo(band.to[0] - none, 0);
});

it("one trial has no range, and a row has a name though none was given", () => {
  const one = trialsPicture({
    ...threeTrials,
    trials: threeTrials.trials.slice(1, 2),
    changeRange: { low: { absent: "one-trial" }, high: { absent: "one-trial" } },
  });
  expect(one.marks.filter(({ look }) => look === "range")).toEqual([]);
  expect(one.facts[0]).toBe("Crop 1: +20 %.");
});

it("what is not drawn of many trials is said", () => {
  const many = Array.from({ length: 30 }, (_, at) => ({ ...threeTrials.trials[0], name: `Crop no. ${at}` }));
  const picture = trialsPicture({ ...threeTrials, trials: many as unknown as typeof threeTrials.trials });
  expect(picture.spots).toHaveLength(24);
  expect(picture.caption).toContain("Not drawn: 6 more crops.");
  expect(picture.facts).toHaveLength(31);
});
