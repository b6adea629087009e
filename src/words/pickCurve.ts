import type { Told } from "../nouns/explanation";
import type { PickCurve, TreatmentCurve } from "../nouns/findings/pickCurve";
import { listText } from "./list";
import { shorterLabel, usualWords } from "./shortLabel";

/** So many treatments are named in one sentence; of more, one fewer. */
const MOST_NAMED = 4;

/** Words that the sentence has for treatments, beside its own. */
const WORDS = 18;
const WORDS_FOR_MORE = 5;

/** PICKCURVE's finding as a cell tells it (METHODS 9.1). */
export function tellPickCurve(found: PickCurve): Told {
  return { finding: () => finding(found), say: () => "" };
}

function finding({ treatments }: PickCurve): string {
  const halves = treatments.flatMap((curve) => (curve.halfBy === null ? [] : [halfText(curve, curve.halfBy)]));
  if (halves.length === 0) return "Nothing was picked.";
  if (halves.length <= MOST_NAMED) return sentence(halves.map((half) => half(Math.floor(WORDS / halves.length) - 2)));
  const named = halves.slice(0, MOST_NAMED - 1);
  const each = Math.floor((WORDS - WORDS_FOR_MORE) / named.length) - 2;
  return sentence([...named.map((half) => half(each)), `${halves.length - named.length} more in the table`]);
}

function sentence(halves: readonly string[]): string {
  return `Half the harvest was in by ${listText(halves)}. Earlier is not more: look at totals too.`;
}

/** "day 18 (Bare soil)", with room for so many words of the label. */
function halfText({ name }: TreatmentCurve, day: number): (words: number) => string {
  return (words) => `day ${day} (${shorterLabel(name, Math.min(words, usualWords))})`;
}
