// @vitest-environment jsdom
import { expect, it } from "vitest";
import type { PerPlant } from "../../../src/nouns/findings/perPlant";
import type { Unevenness } from "../../../src/nouns/findings/unevenness";
import type { UpDown } from "../../../src/nouns/findings/upDown";
import { pictureOf } from "../../../src/pane/plots/pictureOf";
import { strawFinding } from "../strawFinding";
import { svgText } from "./svgText";

const upDown: UpDown = {
  finding: "up-down",
  names: { usual: "Bare soil", tried: null },
  unit: null,
  single: true,
  confidence: 0.95,
  usualMean: 24,
  triedMean: 72,
  usualPlants: 1,
  triedPlants: 1,
  change: 2,
  changeRange: { low: { absent: "single-figures" }, high: { absent: "single-figures" } },
  timesAsMuch: 3,
  cautions: () => [],
};

const perPlant: PerPlant = {
  finding: "per-plant",
  name: "Straw",
  unit: "g",
  rule: "leave out",
  fromTotal: false,
  perPlant: 20,
  setOut: 6,
  lost: 1,
  notRecorded: 0,
  counted: 5,
  total: 100,
  perSurvivingPlant: 20,
  perPlantSetOut: 100 / 6,
  cautions: () => [],
};

const row = {
  name: "Straw",
  plants: 4,
  mean: 20,
  deviation: 5,
  unevenness: 0.25,
  range: { low: 0.2, high: 0.5 },
  median: 20,
  lowest: 12,
  highest: 27,
  odd: [],
};

const unevenness: Unevenness = {
  finding: "unevenness",
  treatments: [row, { ...row, name: null, deviation: { absent: "one-plant" }, unevenness: { absent: "one-plant" } }],
  all: row,
  withinBeds: false,
  unit: "kg",
  leftOut: [],
  cautions: () => [],
};

it.each([upDown, perPlant, unevenness])("the picture of $finding, as approved", async (finding) => {
  await expect(svgText(pictureOf(finding))).toMatchFileSnapshot(`approved/${finding.finding}.txt`);
});

it("bars are as long as their figures are big", () => {
  const bars = pictureOf(upDown)?.marks.filter(({ mark }) => mark === "box") ?? [];
  const lengths = bars.map((bar) => (bar.mark === "box" ? bar.to[0] - bar.from[0] : 0));
  expect((lengths[1] ?? 0) / (lengths[0] ?? 1)).toBeCloseTo(3, 2);
});

it("two treatments are drawn plant by plant", () => {
  expect(pictureOf(strawFinding())?.spots).toHaveLength(6);
});

it("the two rules for lost plants are not drawn where they agree", () => {
  expect(pictureOf({ ...perPlant, lost: 0, setOut: 5, perPlantSetOut: 20 })).toBeNull();
});
