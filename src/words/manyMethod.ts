import type { ManyTreatments } from "../nouns/findings/manyTreatments";
import { counted } from "./counted";
import { plainNumber } from "./plainNumber";

/** How several treatments were compared, for the label "Method" and the pane. */
export function manyMethod({ how, beds, treatments, leftOut }: ManyTreatments): string {
  const lost = leftOut.length === 0 ? "" : `; ${counted(leftOut.length, "row")} without a treatment or bed left out`;
  return `${test(how, beds !== null)}, ${plainNumber(treatments.length)} treatments${lost}`;
}

function test(how: ManyTreatments["how"], inBeds: boolean): string {
  const model = inBeds ? "treatments in beds, beds removed" : "separate plants, one unevenness for all";
  if (how === "against usual") return `Dunnett test against the usual, ${model}`;
  if (how === "all pairs") return `Tukey test of all pairs, ${model}`;
  return "Games-Howell test of all pairs, each treatment with its own unevenness";
}
