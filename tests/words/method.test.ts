import { expect, test } from "vitest";
import type { TwoTreatments } from "../../src/nouns/findings/twoTreatments";
import { methodText } from "../../src/words/method";
import { typicalComparisons } from "./typicalComparisons";

function method(title: string, changed: Partial<TwoTreatments> = {}): string {
  const found = typicalComparisons[title];
  if (found === undefined) return expect.unreachable();
  return methodText({ ...found, ...changed });
}

const separate = "Marlpit Corner, straw against bare soil, separate plants";

test("methodText names the test, and how labels were swapped", () => {
  expect(method(separate)).toBe("Welch t test, separate plants; label swap exact, all 6435 ways");
  expect(method(separate, { how: "equal unevenness" })).toBe(
    "Student t test, equal unevenness; label swap exact, all 6435 ways",
  );
  expect(method("labels that hold anything")).toBe(
    "Welch t test, separate plants; label swap drawn by lot, 20 000 ways",
  );
});

test("methodText counts incomplete beds or pairs, and says when lost plants count as zero", () => {
  expect(method("Marlpit Corner, straw against bare soil, in beds")).toBe(
    "paired t test; label swap within pairs exact, all 128 ways; 1 incomplete bed left out",
  );
  expect(method("Marlpit Corner, lost straw plant counted as zero")).toMatch(/; lost plants count as zero$/);
});

test("methodText says for ranks what p and ranges come from", () => {
  expect(method("insect counts by ranks")).toMatch(/^rank-sum test for p, ranges by Welch t test;/);
  expect(method("sleep in pairs by signed ranks")).toMatch(/^signed-rank test for p, ranges by paired t test;/);
});

test("methodText leaves label swaps out where none were made", () => {
  expect(method(separate, { labelSwap: () => null })).toBe("Welch t test, separate plants");
});
