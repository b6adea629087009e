import { expect, test } from "vitest";
import { shortLabel } from "../../src/words/shortLabel";

test("shortLabel leaves a label as typed, on one line", () => {
  expect(shortLabel("  Straw\n mulch ")).toBe("Straw mulch");
  expect(shortLabel('<b>=1+1</b> "x" 🥒')).toBe('<b>=1+1</b> "x" 🥒');
});

test("shortLabel keeps a full stop within a label from ending a sentence", () => {
  expect(shortLabel("No. 2 mix. New!")).toBe("No.\u00a02 mix.\u00a0New!");
  expect(shortLabel("mix no. 2 of the old compost. And more")).toBe("mix no.\u00a02 of the old…");
});

test("shortLabel cuts at a word, by six words or 40 characters", () => {
  expect(shortLabel("one two three four five six seven")).toBe("one two three four five six…");
  expect(shortLabel("biodegradable polyethylene replacement film")).toBe("biodegradable polyethylene replacement…");
});

test("shortLabel cuts a long word between whole characters", () => {
  const label = shortLabel("🥒".repeat(60));
  expect(label).toBe(`${"🥒".repeat(39)}…`);
});
