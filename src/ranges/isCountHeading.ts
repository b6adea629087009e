import { headingParts } from "./headingParts";

const THINGS = "bulbs?|ears?|eggs?|flowers?|fruits?|heads?|pieces?|pods?|stems?|tubers?";

/** "No" before another word is a treatment's name: "No mulch". */
const COUNTED = new RegExp(
  String.raw`^(?:${THINGS}|count(?:ed)?|no(?:\.| +(?:of|picked|${THINGS})|$)|nr\.?|number|picked)(?!\p{L})`,
  "iu",
);

/** "Fruit weight" measures its fruit. */
const MEASURED = /(?<!\p{L})(?:diameter|height|length|mass|size|weigh(?:t|ed|s)?|width|yield)s?(?!\p{L})/iu;

/** Whether a heading says that its column counts fruit: "fruit", "Number picked", "pods"; never one with a unit. */
export function isCountHeading(heading: string | null): boolean {
  if (heading === null || !COUNTED.test(heading.trim()) || MEASURED.test(heading)) return false;
  return headingParts(heading).unit === null;
}
