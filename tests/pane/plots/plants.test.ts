// @vitest-environment jsdom
import { describe, expect, it } from "vitest";
import { plantKey, plantsPicture } from "../../../src/pane/plots/plants";
import { group, strawFinding } from "../strawFinding";
import { svgText } from "./svgText";

describe("plantsPicture, as approved", () => {
  it("plants, averages and a range with both ends", async () => {
    await expect(svgText(plantsPicture(strawFinding()))).toMatchFileSnapshot("approved/plants.txt");
  });

  it("a range without an upper end, which is an arrow", async () => {
    const finding = strawFinding({ differenceRange: { low: 500, high: { absent: "no-upper-limit" } } });
    await expect(svgText(plantsPicture(finding))).toMatchFileSnapshot("approved/plantsNoUpperEnd.txt");
  });

  it("no headings, no unit, one plant each, no range", async () => {
    const none = { absent: "one-plant" } as const;
    const finding = strawFinding({
      usual: group("usual", null, [5]),
      tried: group("new", null, [7]),
      unit: null,
      differenceRange: { low: none, high: none },
    });
    await expect(svgText(plantsPicture(finding))).toMatchFileSnapshot("approved/plantsOneEach.txt");
  });
});

it("there is no picture of no plants", () => {
  expect(plantsPicture(strawFinding({ usual: group("usual", null, []), tried: group("new", null, []) }))).toBeNull();
});

it("places every plant by its amount, on the axis that the ticks are on", () => {
  const picture = plantsPicture(strawFinding());
  const x = (label: string) => picture?.spots.find((spot) => spot.label.startsWith(label))?.at[0] ?? Number.NaN;
  const tick = picture?.marks.find((mark) => mark.mark === "text" && mark.text === "3000");
  expect(tick?.mark === "text" && tick.at[0]).toBe(x("Bare soil, B3"));
  expect(x("Bare soil, B4") - x("Bare soil, B3")).toBeCloseTo(x("Bare soil, B3") - x("Bare soil, B2"), 0);
});

it("a plant's key is its place within the argument", () => {
  expect(plantKey({ argument: "new", row: 3, column: null })).toBe("new:3:1");
  expect(plantKey({ argument: "new", row: 3, column: 2 })).toBe("new:3:2");
});
