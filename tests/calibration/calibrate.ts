import { allCases } from "./allCases";
import { blocks } from "./blocks/blocks";
import type { Block } from "./experiment";
import { brokenPromises, table } from "./table";
import { nothing, type Slice, type Tally, tallySlice, together } from "./tally";

/** One piece of the whole run, small enough that two threads end at about the same time. */
export interface Piece {
  readonly at: number;
  readonly slice: Slice;
}

/** One piece done. */
export interface PieceDone {
  readonly at: number;
  readonly tally: Tally;
}

const SLICE = 500;

/** What part of the page is asked for. */
export interface Part {
  /** Blocks whose title holds these words; "" for all. */
  readonly words: string;
  /** At most so many trials a case. */
  readonly trials: number;
}

/** All pieces of the run. */
export function pieces(part: Part): readonly Piece[] {
  const asked = blocksOf(part);
  return allCases.flatMap(({ block, case: one }, at) => {
    const trials = asked.includes(block) ? Math.min(one.trials, part.trials) : 0;
    return Array.from({ length: Math.ceil(trials / SLICE) }, (_, number) => ({
      at,
      slice: { number, trials: Math.min(SLICE, trials - number * SLICE) },
    }));
  });
}

function blocksOf({ words }: Part): readonly Block[] {
  return blocks.filter(({ title }) => title.toLowerCase().includes(words.toLowerCase()));
}

export function runPiece({ at, slice }: Piece): PieceDone {
  const named = allCases[at];
  if (named === undefined) throw new Error(`no case ${at}`);
  return { at, tally: tallySlice(named.name, named.case, slice) };
}

/** The page as markdown, and a sentence for each promise that is broken. */
export interface Outcome {
  readonly text: string;
  readonly broken: readonly string[];
}

/** Puts together what came out, from all pieces in whatever order they were done. */
export function outcome(done: readonly PieceDone[], part: Part): Outcome {
  const tallies = new Map<string, Tally>();
  for (const { at, tally } of done) {
    const name = allCases[at]?.name ?? "";
    tallies.set(name, together(tallies.get(name) ?? nothing, tally));
  }
  const asked = blocksOf(part);
  return { text: table(asked, tallies), broken: brokenPromises(asked, tallies) };
}
