// @vitest-environment jsdom
import { expect, it } from "vitest";
import { pictureOf } from "../../../src/pane/plots/pictureOf";
import { typicalPicks } from "../../words/typicalPicks";
import { svgText } from "./svgText";

const picture = (title: string) => pictureOf(typicalPicks[title] ?? expect.fail(title));

it("the running harvest of four mulches, as approved", async () => {
  await expect(svgText(picture("PICKCURVE four mulches"))).toMatchFileSnapshot("approved/pick-curve.txt");
});

it("every curve rises from left to right and ends as high as its total says", () => {
  const curves = picture("PICKCURVE four mulches")?.marks.filter(({ look }) => look.startsWith("curve")) ?? [];
  const ends = curves.slice(0, 4).map((mark) => (mark.mark === "line" ? (mark.points.at(-1)?.[1] ?? 0) : 0));
  // in R: bare soil 3018, straw 3977, grass 2976, woodchip 3071 g
  expect([...ends.keys()].toSorted((one, other) => (ends[one] ?? 0) - (ends[other] ?? 0))).toEqual([1, 3, 0, 2]);
  for (const mark of curves.slice(0, 4)) {
    const points = mark.mark === "line" ? mark.points : [];
    expect(points.every(([x, y], at) => x >= (points[at - 1]?.[0] ?? 0) && y <= (points[at - 1]?.[1] ?? y))).toBe(true);
  }
});

it("nothing is drawn where nothing was picked", () => {
  expect(picture("PICKCURVE nothing picked")).toBeNull();
});
