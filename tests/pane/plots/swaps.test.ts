// @vitest-environment jsdom
import { expect, it } from "vitest";
import { swapsPicture } from "../../../src/pane/plots/swaps";
import { group, strawFinding } from "../strawFinding";
import { svgText } from "./svgText";

it("a hundred swaps, as approved", async () => {
  await expect(svgText(swapsPicture(strawFinding()))).toMatchFileSnapshot("approved/swaps.txt");
});

/** How many of the hundred dots lie as far out as the real gap. */
function farOut(picture: ReturnType<typeof swapsPicture>): number {
  const dots = picture?.marks.filter(({ mark }) => mark === "dot") ?? [];
  expect(dots).toHaveLength(100);
  return dots.filter(({ look }) => look === "swap far").length;
}

it("marks the swaps that are as far out as the real gap, and counts them in the caption", () => {
  const picture = swapsPicture(strawFinding());
  expect(picture?.caption).toContain(`In ${farOut(picture)} of these 100`);
});

it("finds the extreme split of 4 against 4 about 2 times in 70, as all splits counted by hand say", () => {
  const finding = strawFinding({ usual: group("usual", null, [1, 2, 3, 4]), tried: group("new", null, [5, 6, 7, 8]) });
  // 2 of C(8, 4) = 70 splits: 2.9 in 100; more than 9 in 100 would happen once in a thousand draws.
  expect(farOut(swapsPicture(finding))).toBeLessThanOrEqual(9);
});

it("swaps within pairs where there are pairs: two pairs have four ways, two of them as far out", () => {
  const finding = strawFinding({
    pairs: { complete: 2, incomplete: 0 },
    usual: group("usual", null, [10, 100]),
    tried: group("new", null, [12, 103]),
  });
  // Gaps are 2.5, 0.5, −0.5 and −2.5 with one chance in four each: 50 in 100, give or take 4 standard errors of 5.
  const far = farOut(swapsPicture(finding));
  expect(far).toBeGreaterThanOrEqual(30);
  expect(far).toBeLessThanOrEqual(70);
});

it("plants that are all equal make no gap, and every swap is as far out", () => {
  const finding = strawFinding({ usual: group("usual", null, [5, 5]), tried: group("new", null, [5, 5]) });
  expect(farOut(swapsPicture(finding))).toBe(100);
});
