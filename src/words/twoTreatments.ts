import type { Told } from "../nouns/explanation";
import type { TwoTreatments } from "../nouns/findings/twoTreatments";
import { twoTreatmentsFinding } from "./twoTreatmentsFinding";
import { twoTreatmentsSay } from "./twoTreatmentsSay";

/** COMPARETWO's finding as a cell tells it (METHODS 6.1 and 6.4). */
export function tellTwoTreatments(found: TwoTreatments): Told {
  return { finding: () => twoTreatmentsFinding(found), say: () => twoTreatmentsSay(found) };
}
