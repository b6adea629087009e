import type { Share } from "./experiment";
import type { Tally } from "./tally";

/** How large a share was, as a fraction, and its simulation error (one standard error). */
export interface ShareSeen {
  readonly share: number;
  readonly error: number;
}

/** The share of a case's trials in which one of the events happened. */
export function shareSeen({ events }: Share, { trials, counts }: Tally): ShareSeen {
  const share = events.reduce((sum, event) => sum + (counts[event] ?? 0), 0) / trials;
  return { share, error: Math.sqrt((share * (1 - share)) / trials) };
}

/** Whether the share lies on the wrong side of what is promised by more than two simulation errors. */
export function isBroken({ promise }: Share, { share, error }: ShareSeen): boolean {
  const { least = 0, most = 1 } = promise ?? {};
  return share + 2 * error < least || share - 2 * error > most;
}
