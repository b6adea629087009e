import { expect, it } from "vitest";
import { labelKey } from "../../src/ranges/labelKey";

it.each([
  ["Bare soil", " bare  SOIL "],
  ["Grass clippings", "grass\u00A0clippings "],
  ["Café", "cafe\u0301"],
])("labelKey: %j and %j are one treatment", (one, other) => {
  expect(labelKey(one, "name")).toBe(labelKey(other, "name"));
});

it.each([
  ["bare", "Bare soil"],
  ["B1 - 1", "B1-1"],
])("labelKey: %j and %j are two treatments", (one, other) => {
  expect(labelKey(one, "name")).not.toBe(labelKey(other, "name"));
});

it.each(["B1 - 1", "b1- 1", "B1 -1"])("labelKey: %j is the plant B1-1", (label) => {
  expect(labelKey(label, "plant")).toBe(labelKey("B1-1", "plant"));
});

it("labelKey: marks between spaces count in plants' labels, and so do spaces elsewhere", () => {
  expect(labelKey("B 1 / 2 _ 3", "plant")).toBe("b 1/2_3");
});
