import type { Place } from "../nouns/place";
import { listText } from "./list";
import { placeNamed, placeText } from "./place";
import { sentenceStart } from "./sentenceStart";

const mostNamed = 3;

/** C06: the odd values by their places, the first three by name. */
export function farFromTheRest(places: readonly Place[]): string {
  const [first] = places;
  if (places.length === 1 && first !== undefined) {
    return `${sentenceStart(placeNamed(first))} is far from the rest. Check for a typing slip; keep it if it is real.`;
  }
  const named = places.slice(0, mostNamed).map(placeText);
  const more = places.length - named.length;
  const list = sentenceStart(listText(more > 0 ? [...named, `${more} more`] : named));
  return `${list} are far from the rest. Check for typing slips; keep what is real.`;
}
