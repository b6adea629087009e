import type { Explanation } from "../nouns/explanation";
import type { TellableFinding } from "../nouns/report";
import type { TrialNotes } from "../nouns/trialNotes";
import { sentences } from "./sentences";
import { trialCautions } from "./trialCautions";
import { trialPhrase } from "./trialPhrase";
import { withCautions } from "./withCautions";

/**
 * A comparison's explanation with what the trial's notes add: what was measured, where and when, and what the answers
 * to the checklist warn of. A cause that was written down needs no asking for (METHODS 9.2, C04).
 */
export function withTrial(told: Explanation, finding: TellableFinding, notes: TrialNotes): Explanation {
  if (finding.finding === "many-trials") return told;
  const { lookOutFor, ...rest } = withCautions(told, trialCautions(notes));
  const phrase = trialPhrase(finding, notes);
  const causesKnown = notes.answers["losses-written"] === "yes";
  return {
    ...rest,
    lookOutFor: causesKnown ? lookOutFor.filter(({ code }) => code !== "C04") : lookOutFor,
    say: phrase === "" || told.say === "" ? told.say : sentences(told.say, `Our trial: ${phrase}.`),
    compared: phrase === "" ? told.compared : sentences(told.compared, `The trial: ${phrase}.`),
  };
}
