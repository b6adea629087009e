import { expect, it } from "vitest";
import { LOST_WORDS } from "../../src/nouns/lostWords";
import { isLostWord } from "../../src/ranges/isLostWord";

it("LOST_WORDS are the words of METHODS 4.1", () => {
  expect([...LOST_WORDS].sort()).toEqual(["broken", "dead", "died", "lost", "missing plant", "stolen"]);
});

it.each(LOST_WORDS)("LOST_WORDS that the pane shows are read as lost: %s", (word) => {
  expect(isLostWord(word)).toBe(true);
});
