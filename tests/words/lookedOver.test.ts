import { expect, it } from "vitest";
import type { LookedOver } from "../../src/nouns/findings/lookedOver";
import type { Reading } from "../../src/nouns/reading";
import { tellLookedOver } from "../../src/words/lookedOver";
import { cell } from "./records";

const unreadable = (address: string): Reading => ({
  kind: "unreadable",
  why: "text",
  place: cell(address),
  text: "slugs",
});

function lookedOver(readings: readonly Reading[], needLook: number): LookedOver {
  const count = { cells: 100_000, numbers: 0, needLook, from: 1 };
  return { finding: "looked-over", ...count, columns: [], readings, cautions: () => [] };
}

it("names the first three cells, each once and by its first reading, past those that need no look", () => {
  const readings: readonly Reading[] = [
    { kind: "zero", place: cell("B2"), text: "0" },
    unreadable("B3"),
    { kind: "odd-size", because: "far", place: cell("B3"), text: "slugs" },
    { kind: "error", place: cell("B4"), text: "#N/A" },
    { kind: "lost", place: cell("B5"), text: "lost" },
    unreadable("B6"),
    unreadable("B7"),
  ];
  expect(tellLookedOver(lookedOver(readings, 4)).finding()).toBe(
    "100 000 cells read, 4 need a look. First look at B3 (cannot be read), B4 (an error) and B6 (cannot be read).",
  );
});

it("names them without going through all of many", () => {
  let read = 0;
  const readings = Array.from({ length: 100_000 }, (_, at) => {
    const { place, ...rest } = unreadable(`B${at + 2}`);
    return {
      ...rest,
      get place() {
        read += 1;
        if (read > 10) throw new Error("goes through all of them");
        return place;
      },
    };
  });
  expect(tellLookedOver(lookedOver(readings, 100_000)).finding()).toMatch(/B2 .* B3 .* B4 \(/);
});
