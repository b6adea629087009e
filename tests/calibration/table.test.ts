import { expect, it } from "vitest";
import type { Block } from "./experiment";
import { brokenPromises, table } from "./table";

const block: Block = {
  title: "Coins",
  headings: ["Coin", "Thrown"],
  shares: [
    { heading: "Heads", events: ["heads"], promise: { most: 0.55 } },
    { heading: "Edge", events: ["edge", "rim"] },
  ],
  cases: [
    { about: ["penny", "high"], trials: 2000, experiment: () => [] },
    { about: ["dime", "low"], trials: 100, experiment: () => [] },
  ],
  meaning: ({ least, most }) => `Heads in ${least("Heads")} to ${most("Heads")}; high: ${most("Heads", "high")}.`,
};

const tallies = new Map([
  ["Coins | penny | high", { trials: 2000, counts: { heads: 1000, edge: 20, rim: 10 } }],
  ["Coins | dime | low", { trials: 100, counts: { heads: 70 } }],
]);

it("writes a line a case, what is promised, and what it means", () => {
  const lines = table([block], tallies).split("\n");
  expect(lines).toContain("| Coin | Thrown | Trials | Heads (at most 55 %) | Edge |");
  expect(lines).toContain("| penny | high | 2 000 | 50.0 % | 1.5 % |");
  expect(lines).toContain("| dime | low | 100 | 70.0 % | 0.0 % |");
  expect(lines).toContain("Heads in 50.0 % to 70.0 %; high: 50.0 %.");
});

it("names a promise broken by more than two simulation errors", () => {
  expect(brokenPromises([block], tallies)).toEqual(["Coins | dime | low: Heads is 70.0 %"]);
  const luckier = new Map([...tallies, ["Coins | dime | low", { trials: 100, counts: { heads: 60 } }] as const]);
  expect(brokenPromises([block], luckier)).toEqual([]);
});
