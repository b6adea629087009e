import type { Caution } from "../nouns/caution";
import { timesInHundred } from "./chance";
import { counted } from "./counted";

/** C01: how often luck alone gives the most one-sided split that so few plants can give (METHODS 6.2). */
export function fewPlantsSentences(caution: Extract<Caution, { caution: "C01" }>): string {
  const { plants, pairs, mostOneSided } = caution;
  const [usual, tried] = plants;
  const size = pairs ? `just ${counted(usual, "pair")}` : `${counted(usual, "plant")} against ${tried}`;
  const times = timesInHundred(mostOneSided).replace(/^about /, "");
  const often = times.endsWith("every time") ? times : `${times} in 100`;
  return `With ${size}, luck alone gives the most one-sided split ${often}. So this trial cannot settle it.`;
}
