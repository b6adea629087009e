import { namedCases } from "./allCases";
import type { Block, Seen, Share } from "./experiment";
import { isBroken, type ShareSeen, shareSeen } from "./share";
import { nothing, type Tally } from "./tally";

/** Tallies by the name of their case. */
export type Tallies = ReadonlyMap<string, Tally>;

const HEAD = `# How often is it wrong?

Fairbed's own functions were given the harvests of trials that never were. A computer drew each plant's yield by lot
from known averages, so the truth is known and every answer can be marked. \`npm run calibrate\` makes this page anew.

Plants differ as real ones do: weights of two shapes (gamma, lognormal), or counts of fruit (negative-binomial). "Plants
30 %" means an unevenness of 30 % between plants treated alike. Worthwhile is 10 % and ranges are 95 %, as when nothing
else is typed. What a heading says, "at most" or "at least", is kept, give or take two simulation errors; where a
promise is missed, the block says so. With 20 000 trials chance alone moves a figure of 2.5 % by 0.2 points, and one of
95 % by 0.3.
`;

/** The whole page, as markdown. */
export function table(blocks: readonly Block[], tallies: Tallies): string {
  return [HEAD, ...blocks.map((block) => blockText(block, tallies))].join("\n");
}

/** Every promise that a share breaks by more than two simulation errors, as a sentence each. */
export function brokenPromises(blocks: readonly Block[], tallies: Tallies): readonly string[] {
  return namedCases(blocks).flatMap(({ name, block }) => {
    const tally = tallies.get(name) ?? nothing;
    return block.shares.flatMap((share) => {
      const seen = shareSeen(share, tally);
      return isBroken(share, seen) ? `${name}: ${share.heading} is ${percent(seen)}` : [];
    });
  });
}

/** A case as simulated. */
interface CaseSeen {
  readonly about: readonly string[];
  readonly tally: Tally;
}

function blockText(block: Block, tallies: Tallies): string {
  const cases = namedCases([block]).map(({ name, case: { about } }) => ({
    about,
    tally: tallies.get(name) ?? nothing,
  }));
  const rows = cases.map(({ about, tally }) => {
    const shares = block.shares.map((share) => percent(shareSeen(share, tally)));
    return [...about, thousands(tally.trials), ...shares];
  });
  const header = [...block.headings, "Trials", ...block.shares.map(headingOf)];
  const lines = [header, header.map(() => "---"), ...rows].map((cells) => `| ${cells.join(" | ")} |`);
  const seen = seenIn(block, cases);
  return [`## ${block.title}`, "", ...lines, "", block.meaning(seen), ""].join("\n");
}

/** The heading, and what is promised of the column below it. */
function headingOf({ heading, promise }: Share): string {
  const { least, most } = promise ?? {};
  const bounds = [
    least === undefined ? [] : `at least ${points(least)}`,
    most === undefined ? [] : `at most ${points(most)}`,
  ].flat();
  return bounds.length === 0 ? heading : `${heading} (${bounds.join(", ")})`;
}

function seenIn({ shares }: Block, cases: readonly CaseSeen[]): Seen {
  const sorted = (heading: string, where?: string) => {
    const share = shares.find((one) => one.heading === heading);
    const asked = cases.filter(({ about }) => where === undefined || about.includes(where));
    if (share === undefined || asked.length === 0) throw new Error(`no share ${heading} where ${where}`);
    return asked.map(({ tally }) => shareSeen(share, tally)).toSorted((one, other) => one.share - other.share);
  };
  return {
    least: (heading, where) => percent(sorted(heading, where)[0] as ShareSeen),
    most: (heading, where) => percent(sorted(heading, where).at(-1) as ShareSeen),
  };
}

function percent({ share }: { readonly share: number }): string {
  return `${(100 * share).toFixed(1)} %`;
}

function points(share: number): string {
  return `${Number((100 * share).toFixed(1))} %`;
}

function thousands(trials: number): string {
  return String(trials).replace(/\B(?=(\d{3})+$)/g, " ");
}
