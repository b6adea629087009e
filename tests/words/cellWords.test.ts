import { expect, test } from "vitest";
import { cellWords } from "../../src/words/cellWords";
import { wordCount } from "../../src/words/wordCount";
import { group, twoTreatments } from "./records";
import { typicalComparisons } from "./typicalComparisons";
import { typicalFindings } from "./typicalFindings";

const straw = typicalComparisons["Marlpit Corner, straw against bare soil, in beds"];

test("the longest labels still leave at most 60 words, and the first caution among them", () => {
  if (straw === undefined) expect.unreachable();
  const words = cellWords({
    ...straw,
    usual: group("usual", { name: "a b c d e f g h i j k l m n o p", plants: 7, mean: 3063.143, unevenness: 0.22 }),
    tried: group("new", { name: "q r s t u v w x y z a b c d e f", plants: 7, mean: 4350.571, unevenness: 0.33 }),
    change: 1.4202966,
  });
  expect(wordCount(words)).toBeLessThanOrEqual(60);
  expect(words).toContain("This rests on one plant, in cell D8.");
});

test("where place and season is the only caution, it is the one that is told", () => {
  if (straw === undefined) expect.unreachable();
  const { labelSwap, cautions, ...rest } = straw;
  expect(cautions().length).toBeGreaterThan(1);
  expect(cellWords(twoTreatments({ ...rest, swap: labelSwap() }))).toMatch(/One place, one season\.$/);
});

test("UPDOWN does not say twice that up 200 % is 3 times", () => {
  const upDown = typicalFindings["UPDOWN 24 to 72"];
  if (upDown === undefined) expect.unreachable();
  expect(cellWords(upDown)).toBe("72 is 3 times 24: up 200 %, not 300 %. One place, one season.");
});
