import { expect, it } from "vitest";
import { asTrouble, troubleText } from "../../src/pane/trouble";

it.each([
  [{ trouble: "several-areas", where: "" } as const, /select one block/],
  [{ trouble: "no-such-range", where: "straw2" } as const, /no straw2\. Check/],
  [{ trouble: "protected", where: "" } as const, /^The sheet is protected/],
  [{ trouble: "not-kept", where: "" } as const, /could not be kept .* Try once more\.$/],
])("%o says what to do", (trouble, sentence) => {
  expect(troubleText(trouble)).toMatch(sentence);
});

it("takes the port's record as it is and throws anything else on", () => {
  const trouble = { trouble: "editing", where: "" };
  expect(asTrouble(trouble)).toBe(trouble);
  expect(() => asTrouble(new TypeError("a slip"))).toThrow("a slip");
});
