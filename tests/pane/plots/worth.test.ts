// @vitest-environment jsdom
import { expect, it } from "vitest";
import { worthPicture } from "../../../src/pane/plots/worth";
import { worthOfStraw } from "./seasons";
import { svgText } from "./svgText";

it("worth, cost and what is left with its range, as approved", async () => {
  await expect(svgText(worthPicture(worthOfStraw))).toMatchFileSnapshot("approved/worth-it.txt");
});

it("bars are as long as the money: worth 3.00 against a cost of 1.10", () => {
  const bars = worthPicture(worthOfStraw).marks.flatMap((one) => (one.mark === "box" ? [one.to[0] - one.from[0]] : []));
  expect((bars[0] ?? 0) / (bars[1] ?? 1)).toBeCloseTo(3 / 1.1, 1);
});

it("a loss and a saving lie left of nothing, and are called by their names", () => {
  const cheaper = worthPicture({ ...worthOfStraw, worth: -3, extraCost: -1, left: -2 });
  expect(cheaper.facts.slice(0, 3)).toEqual(["The lost harvest was worth: 3.00.", "Saved: 1.00.", "Lost: 2.00."]);
  const base = cheaper.marks.find(({ look }) => look === "base");
  const none = base?.mark === "line" ? base.points[0]?.[0] : Number.NaN;
  for (const bar of cheaper.marks) if (bar.mark === "box") expect(bar.to[0]).toBe(none);
});

it("single averages have no range", () => {
  const single = { absent: "single-figures" } as const;
  const picture = worthPicture({ ...worthOfStraw, leftRange: { low: single, high: single } });
  expect(picture.marks.filter(({ look }) => look === "range")).toEqual([]);
  expect(picture.caption).toBe("Dashed: nothing left.");
});
