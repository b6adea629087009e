import { headingParts } from "./headingParts";

const COUNTED =
  /^(?:bulbs?|count(?:ed)?|ears?|eggs?|flowers?|fruits?|heads?|no\.?|nr\.?|number|picked|pieces?|pods?|stems?|tubers?)(?![\p{L}])/iu;

/** Whether a heading says that its column counts fruit: "fruit", "Number picked", "pods"; never one with a unit. */
export function isCountHeading(heading: string | null): boolean {
  return heading !== null && COUNTED.test(heading.trim()) && headingParts(heading).unit === null;
}
