import { ask } from "./ask";
import type { Experiment } from "./experiment";
import { harvest, type SideBySide } from "./sideBySide";

/** Shares at which the label-swap p is counted. */
export const SWAP_SHARES = [0.01, 0.05, 0.1, 0.25, 0.5, 0.75, 0.9] as const;

/** Asks COMPARETWO how often swapped labels give as big a gap: "swap p at most 0.05". */
export function labelSwaps(trial: SideBySide): Experiment {
  return (source) => {
    const found = ask("COMPARETWO", "two-treatments", { ...harvest(trial, source), ...trial.options });
    const p = found.labelSwap()?.p ?? Number.NaN;
    return SWAP_SHARES.filter((share) => p <= share).map((share) => `swap p at most ${share}`);
  };
}
