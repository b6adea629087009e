// @vitest-environment jsdom
import { expect, it } from "vitest";
import { bedsPicture } from "../../../src/pane/plots/beds";
import { mulches, mulchesInPairs } from "../mulches";
import { svgText } from "./svgText";

it("joins the plants of each bed, as approved", async () => {
  await expect(svgText(bedsPicture(mulches()))).toMatchFileSnapshot("approved/beds.txt");
});

it("a line for every bed, through one plant of each treatment that has one there", () => {
  const lines = bedsPicture(mulches())?.marks.filter(({ mark, look }) => mark === "line" && look.startsWith("bed"));
  // the lowest and the highest bed have a short line more, to their name
  expect(lines?.map((line) => line.mark === "line" && line.points.length)).toEqual([3, 3, 2, 2, 2]);
});

it("names the lowest and the highest bed", () => {
  const texts = bedsPicture(mulches())?.marks.flatMap((mark) => (mark.mark === "text" ? mark.text : []));
  expect(texts).toEqual(expect.arrayContaining(["Bed 1", "Bed C"]));
  expect(texts).not.toContain("Bed 2");
});

it("every plant is a dot that names treatment, bed, cell and amount", () => {
  const spots = bedsPicture(mulches())?.spots ?? [];
  expect(spots).toHaveLength(8);
  expect(spots[0]).toMatchObject({ key: "amounts:2:1", label: "Straw, bed 1, D2: 3000 g" });
});

it("separate plants have no such picture", () => {
  expect(bedsPicture(mulchesInPairs())).toBeNull();
});
