import { expect, it } from "vitest";
import { bedLayout, type Stand } from "../../../src/pane/beside/bedLayout";

const stands = (text: string) => text.split(" ").map((one): Stand => [one[0]?.trim() ?? "", one.slice(1)]);

it.each([
  ["two beds with both treatments", "a1 b1 a2 b2", "shared"],
  ["two beds with two treatments, a third with one", "a1 b1 b2 c2 a3", "shared"],
  ["one bed with both only", "a1 b1 a2 b3", null],
  ["each treatment in its own bed", "a1 a1 b2 b2 c3", "own"],
  ["two beds for each treatment, none shared", "a1 a2 b3 b4", null],
  ["two treatments in one bed", "a1 b1", null],
  ["one treatment", "a1 a1", null],
  ["plants without a bed are passed over", "a1 a b2 b", "own"],
])("%s", (_, plants, layout) => {
  expect(bedLayout(stands(plants))).toBe(layout);
});

it("no plants", () => {
  expect(bedLayout([])).toBeNull();
});
