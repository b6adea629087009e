import type { Explanation } from "../nouns/explanation";
import type { PlainNumbers } from "../nouns/findings/plainNumbers";
import { lookOutFor } from "./lookOutFor";
import { unitName } from "./notPlain";
import { tellPlainNumbers } from "./plainNumbers";

/** PLAINNUMBER's finding in plain words. It tells nothing about luck, as it compares nothing. */
export function explainPlainNumbers(found: PlainNumbers): Explanation {
  const told = tellPlainNumbers(found);
  return {
    finding: told.finding(),
    say: told.say(),
    compared: `Each cell was read by itself. A number with no unit beside it is taken as ${unitName(found.unit)}.`,
    luck: [],
    lookOutFor: lookOutFor(found.cautions()),
    next: ["Put the unit in the heading, and only numbers below it."],
    workings: [
      "A word for a lost plant stays “lost”, and a word for none is 0.",
      "1 lb is 453.59237 g, 1 oz is 28.349523125 g and 1 in is 2.54 cm (NIST Special Publication 811).",
    ],
  };
}
