import type { Explanation } from "../nouns/explanation";
import type { ManyTrials } from "../nouns/findings/manyTrials";
import { isKnown } from "../nouns/known";
import { counted } from "./counted";
import { decisionSentences } from "./decision";
import { lookOutFor } from "./lookOutFor";
import { tellManyTrials } from "./manyTrials";
import { namesOf } from "./names";
import { percentText } from "./percent";
import { sentenceStart } from "./sentenceStart";

/** MANYTRIALS' finding in plain words (METHODS 9.1). */
export function explainManyTrials(found: ManyTrials): Explanation {
  const { trials, rowIs, worthwhile } = found;
  const told = tellManyTrials(found);
  const { usual, tried } = namesOf(found.names.usual, found.names.tried);
  return {
    finding: told.finding(),
    say: told.say(),
    compared: `${sentenceStart(tried)} against ${usual} in ${counted(trials.length, rowIs)}. Each counts once.`,
    luck: luck(found),
    lookOutFor: lookOutFor(found.cautions()),
    next: next(found),
    workings: [
      "The average of the logs of new over usual, with its t range (Student 1908), turned back into percent.",
      `Worthwhile is taken as ${percentText(worthwhile.size)}.`,
    ],
  };
}

function luck({ trials, rowIs, changeRange }: ManyTrials): readonly string[] {
  if (trials.length === 1) return [`One ${rowIs} cannot show how far luck reaches.`];
  if (!isKnown(changeRange.low)) return ["All of them changed alike, so nothing shows how far luck reaches."];
  return [`The range comes from how much the ${rowIs}s differ. Plants within them do not enter it.`];
}

/** One more row while rows are few or open, else the decision table of METHODS 2.1. */
function next({ trials, verdict, rowIs }: ManyTrials): readonly string[] {
  if (trials.length < 3 || verdict.startsWith("open")) return [`Add one more ${rowIs}: each makes the range narrower.`];
  return verdict === "none" ? ["No change on this evidence."] : decisionSentences(verdict);
}
