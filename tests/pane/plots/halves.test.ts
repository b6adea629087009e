// @vitest-environment jsdom
import { expect, it } from "vitest";
import { pictureOf } from "../../../src/pane/plots/pictureOf";
import { typicalPicks } from "../../words/typicalPicks";
import { svgText } from "./svgText";

const picture = (title: string) => pictureOf(typicalPicks[title] ?? expect.fail(title));

it("half-harvest days of 31 plants, as approved", async () => {
  await expect(svgText(picture("HALFPICKED the clean log"))).toMatchFileSnapshot("approved/half-picked.txt");
});

it("a dot per plant, none over another, each led back to its cell", () => {
  const spots = picture("HALFPICKED the clean log")?.spots ?? [];
  expect(spots).toHaveLength(31);
  expect(new Set(spots.map(({ at }) => String(at))).size).toBe(31);
  expect(spots[0]).toMatchObject({ key: "plants:1:1", label: "B1-1: day 25" });
});

it("plants without such a day are told, and nothing is drawn without any", () => {
  expect(picture("HALFPICKED one plant of four, from a given start")?.facts).toContain("3 plants without such a day.");
  expect(picture("HALFPICKED no plant")).toBeNull();
});
