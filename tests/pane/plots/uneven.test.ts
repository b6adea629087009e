import { expect, it } from "vitest";
import type { Unevenness } from "../../../src/nouns/findings/unevenness";
import { unevenPicture } from "../../../src/pane/plots/uneven";
import { unevenness } from "../../../src/questions/unevenness";
import { found, given } from "../../questions/range";

/** The unevenness of the plants of each treatment. */
function uneven(plants: Readonly<Record<string, readonly number[]>>): Unevenness {
  const rows = Object.entries(plants).flatMap(([name, amounts]) => amounts.map((amount) => [name, amount] as const));
  const [treatments, amounts] = [rows.map(([name]) => name), rows.map(([, amount]) => amount)];
  return found(unevenness(given({ amounts, treatments })));
}

function across(finding: Unevenness): readonly number[] {
  return (unevenPicture(finding)?.marks ?? []).flatMap((mark) => {
    if (mark.mark === "box") return [mark.from[0], mark.to[0]];
    return mark.mark === "line" ? mark.points.map(([x]) => x) : [];
  });
}

it.each([
  ["two plants, whose deviation reaches beyond both", [10, 20]],
  ["plants that differ by more than their average", [0, 0, 0, 100]],
  ["plants that are all equal", [5, 5, 5]],
  ["plants that bore nothing", [0, 0]],
  ["measurements below zero", [-3, -1, 2]],
])("%s are drawn inside the picture", (_, straw) => {
  const places = across(uneven({ Straw: straw }));
  expect(places.length).toBeGreaterThan(0);
  for (const place of places) {
    expect(place).toBeGreaterThanOrEqual(8);
    expect(place).toBeLessThanOrEqual(326 - 8);
  }
});

it("treatments that are not drawn are told of", () => {
  const many = Object.fromEntries(
    Array.from({ length: 10 }, (_, at) => [`Mulch ${String.fromCharCode(65 + at)}`, [1, 2]]),
  );
  expect(unevenPicture(uneven(many))?.caption).toMatch(/ Not drawn: 2 more treatments\.$/);
  expect(unevenPicture(uneven({ Straw: [1, 2] }))?.caption).not.toContain("Not drawn");
});
