import type { Caution } from "../nouns/caution";
import type { Explanation } from "../nouns/explanation";
import { cautionLine } from "./caution";
import { byPriority } from "./cautionOrder";

/** Comparing plants as if they stood in no beds, two checks for luck and single plants say nothing of the beds. */
const silencedByBeds: ReadonlySet<string> = new Set(["C21", "C22"]);

/** An explanation with cautions added that its cell cannot know of, as they rest on the sheet around it (METHODS 9). */
export function withCautions(told: Explanation, around: readonly Caution[]): Explanation {
  if (around.length === 0) return told;
  const inBeds = around.some(({ caution }) => caution === "C11");
  const lookOutFor = [...told.lookOutFor, ...around.map(cautionLine)]
    .filter(({ code }) => !(inBeds && silencedByBeds.has(code)))
    .sort((one, other) => byPriority(one.code, other.code));
  return { ...told, lookOutFor };
}
