// @vitest-environment jsdom
import { expect, it } from "vitest";
import { planPicture } from "../../../src/pane/plots/plan";
import { svgText } from "./svgText";

/** METHODS of the project, smallest increase seen at an unevenness of 30 % (made with R's noncentral t). */
const points = [
  { plantsEach: 2, change: null },
  { plantsEach: 4, change: 1.24 },
  { plantsEach: 6, change: 0.78 },
  { plantsEach: 8, change: 0.6 },
  { plantsEach: 12, change: 0.45 },
  { plantsEach: 20, change: 0.32 },
];

it("the curve with this plan on it, as approved", async () => {
  const picture = planPicture({ points, mine: { plantsEach: 8, change: 0.6 }, hoped: 0.5 });
  await expect(svgText(picture)).toMatchFileSnapshot("approved/plan.txt");
});

it("a plan that shows nothing is a line without a dot", async () => {
  const picture = planPicture({ points, mine: { plantsEach: 2, change: null }, hoped: 0.5 });
  await expect(svgText(picture)).toMatchFileSnapshot("approved/planShowsNothing.txt");
});

it("there is no curve through fewer than two plans", () => {
  expect(planPicture({ points: points.slice(0, 2), mine: { plantsEach: 4, change: 1.24 }, hoped: 0.5 })).toBeNull();
});

it("losses are drawn as their size", () => {
  const losses = points.map(({ plantsEach, change }) => ({ plantsEach, change: change === null ? null : -change / 2 }));
  const picture = planPicture({ points: losses, mine: { plantsEach: 8, change: -0.3 }, hoped: -0.5 });
  const curve = picture?.marks.find(({ look }) => look === "curve");
  const gains = planPicture({
    points: points.map(({ plantsEach, change }) => ({ plantsEach, change: change === null ? null : change / 2 })),
    mine: { plantsEach: 8, change: 0.3 },
    hoped: 0.5,
  });
  expect(curve).toEqual(gains?.marks.find(({ look }) => look === "curve"));
  const texts = picture?.marks.flatMap((mark) => (mark.mark === "text" ? [mark.text] : []));
  expect(texts).toEqual(expect.arrayContaining(["0 %", "−20 %", "−60 %", "your plan: 8 each, −30 %"]));
});
