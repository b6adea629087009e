import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { allCases, type NamedCase } from "./allCases";
import { isBroken, shareSeen } from "./share";
import { tallySlice } from "./tally";

/** What the committed page says of a case's shares, as fractions, and from how many trials. */
function onPage({ block, case: { about } }: NamedCase): {
  readonly trials: number;
  readonly shares: readonly number[];
} {
  const part = page.find((text) => text.startsWith(`${block.title}\n`)) ?? "";
  const row = part.split("\n").find((line) => line.startsWith(`| ${about.join(" | ")} | `)) ?? "";
  const [trials = "", ...shares] = row.slice(2, -2).split(" | ").slice(about.length);
  return {
    trials: Number(trials.replace(" ", "")),
    shares: shares.map((text) => Number(text.replace(" %", "")) / 100),
  };
}

const page = readFileSync("tests/calibration/table.md", "utf8").split("\n## ");

/** As far apart as a small run and the page come by chance once in fifteen thousand, in simulation errors. */
const FAR = 4;

// The last case of every block; what takes longer to ask with fewer trials.
const lasts = [...new Map(allCases.map((one) => [one.block, one])).values()];

describe("a small run breaks no promise and agrees with the page", () => {
  it.each(lasts)("$name", (named) => {
    const { name, block, case: one } = named;
    const tally = tallySlice(name, one, { number: 0, trials: one.trials < 5000 ? 16 : 200 });
    const { shares } = onPage(named);
    expect(shares).toHaveLength(block.shares.length);
    for (const [at, share] of block.shares.entries()) {
      const seen = shareSeen(share, tally);
      const known = shares[at] ?? Number.NaN;
      const error = Math.sqrt(Math.max(known * (1 - known), 1 / tally.trials) / tally.trials);
      expect(isBroken(share, seen), `${share.heading}, as promised`).toBe(false);
      expect(Math.abs(seen.share - known), share.heading).toBeLessThan(FAR * error);
    }
  });
});

it("the page holds every promise in its headings, and has the trials it should", () => {
  for (const named of allCases) {
    const { trials, shares } = onPage(named);
    expect(trials, named.name).toBe(named.case.trials);
    for (const [at, share] of named.block.shares.entries()) {
      const known = shares[at] ?? Number.NaN;
      const error = Math.sqrt((known * (1 - known)) / trials);
      expect(isBroken(share, { share: known, error }), `${named.name}: ${share.heading}`).toBe(false);
    }
  }
});
