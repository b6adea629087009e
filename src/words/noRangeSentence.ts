import { isKnown, type Known } from "../nouns/known";

/** Why luck cannot be judged, from the reason that stands in a missing range end's place; "" where a range is given. */
export function noRangeSentence(end: Known): string {
  if (isKnown(end)) return "";
  switch (end.absent) {
    case "single-figures":
      return "Two single figures tell nothing about luck.";
    case "one-plant":
    case "one-plant-only":
      return "A group of one plant gives no range, so nothing here measures luck.";
    case "all-equal":
      return "Within each group all values are equal, so nothing here measures luck. Check the data.";
    default:
      return "";
  }
}
