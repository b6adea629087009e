import type { HowMany } from "../nouns/findings/manyTreatments";
import type { LostPlants } from "../nouns/lostPlants";
import type { Worthwhile } from "../nouns/verdict";

/** The options of a comparison of several treatments; `usual` is a treatment's number. */
export interface ManyAsked {
  readonly how: HowMany;
  readonly usual: number | null;
  readonly worthwhile: Worthwhile;
  readonly lostPlants: LostPlants;
}
