import type { Case } from "../experiment";
import { type SideBySide, sideBySide } from "../sideBySide";
import { changeText, kindText, PROMISED, percent } from "./text";

/** The headings of sideBySideCases. */
export const HEADINGS = ["Plants", "Usual and new", "Unevenness", "True change"];

/** Kinds of trials of two treatments, each with every one of the true changes. */
export function sideBySideCases(
  kinds: readonly Omit<SideBySide, "change">[],
  changes: readonly number[],
  trials: number = PROMISED,
): Case[] {
  return kinds.flatMap((trial) =>
    changes.map((change) => ({
      about: [kindText(trial.kind), numbers(trial), unevennesses(trial), changeText(change)],
      trials,
      experiment: sideBySide({ ...trial, change }),
    })),
  );
}

/** Trials of as many plants of each treatment, alike in unevenness. */
export function even(
  kind: SideBySide["kind"],
  plants: readonly number[],
  unevennesses: readonly number[],
): Omit<SideBySide, "change">[] {
  return plants.flatMap((each) =>
    unevennesses.map((unevenness) => ({
      kind,
      plants: [each, each] as const,
      unevenness: [unevenness, unevenness] as const,
    })),
  );
}

function numbers({ plants: [usual, tried] }: Omit<SideBySide, "change">): string {
  return `${usual} and ${tried}`;
}

function unevennesses({ unevenness: [usual, tried] }: Omit<SideBySide, "change">): string {
  return usual === tried ? percent(usual) : `${percent(usual)} and ${percent(tried)}`;
}
