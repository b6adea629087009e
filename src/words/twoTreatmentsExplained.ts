import type { Explanation } from "../nouns/explanation";
import type { TwoTreatments } from "../nouns/findings/twoTreatments";
import { lookOutFor } from "./lookOutFor";
import { tellTwoTreatments } from "./twoTreatments";
import { twoTreatmentsCompared } from "./twoTreatmentsCompared";
import { twoTreatmentsLuck } from "./twoTreatmentsLuck";
import { twoTreatmentsNext } from "./twoTreatmentsNext";
import { twoTreatmentsWorkings } from "./twoTreatmentsWorkings";

/** COMPARETWO's finding in plain words (METHODS 6 and 9.1). */
export function explainTwoTreatments(found: TwoTreatments): Explanation {
  const told = tellTwoTreatments(found);
  return {
    finding: told.finding(),
    say: told.say(),
    compared: twoTreatmentsCompared(found),
    luck: twoTreatmentsLuck(found),
    lookOutFor: lookOutFor(found.cautions()),
    next: twoTreatmentsNext(found),
    workings: twoTreatmentsWorkings(found),
  };
}
