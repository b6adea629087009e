import { expect, test } from "vitest";
import { namesOf } from "../../src/words/names";

test("namesOf takes the headings, and the usual and the new without them", () => {
  expect(namesOf("Bare soil", "Straw")).toEqual({ usual: "Bare soil", tried: "Straw" });
  expect(namesOf(null, "Straw")).toEqual({ usual: "the usual", tried: "Straw" });
  expect(namesOf("  ", null)).toEqual({ usual: "the usual", tried: "the new" });
});

test("namesOf drops two headings that read the same", () => {
  expect(namesOf("Yield (g)", " yield  (g)")).toEqual({ usual: "the usual", tried: "the new" });
});
