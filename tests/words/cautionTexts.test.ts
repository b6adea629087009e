import { expect, test } from "vitest";
import { cautionTexts } from "../../src/words/cautionTexts";
import { typicalComparisons } from "./typicalComparisons";

test("cautionTexts lists every caution, most important first, place and season last", () => {
  const straw = typicalComparisons["Marlpit Corner, straw against bare soil, in beds"];
  if (straw === undefined) expect.unreachable();
  const texts = cautionTexts(straw);
  expect(texts).toHaveLength(5);
  expect(texts[0]).toBe("This rests on one plant, in cell D8. Without it, the result is not settled.");
  expect(texts.at(-1)).toBe("One place, one season.");
});
