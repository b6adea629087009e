import { quoted } from "../../formula/quoted";
import type { NumberFormat } from "../../host/newSheet";

/** One range that a question takes. */
export interface StartRange {
  readonly label: string;
  readonly optional: boolean;
}

/** One question that a grower may start with. */
export interface StartQuestion {
  /** The function that answers it. */
  readonly value: string;
  readonly text: string;
  readonly format: NumberFormat;
  /** The ranges it takes, as they are asked for. */
  readonly ranges: readonly StartRange[];
  /** Whether it asks which treatment is the usual. */
  readonly asksUsual: boolean;
}

const needed = (label: string): StartRange => ({ label, optional: false });
const two = [needed("Usual plants"), needed("New plants")];
const many = [
  needed("Amounts, one per plant"),
  needed("Treatments beside them"),
  { label: "Beds beside them, if any", optional: true },
];

/** The questions in the order they are offered; the first is chosen at the start. */
export const startQuestions: readonly [StartQuestion, ...StartQuestion[]] = [
  {
    value: "COMPARETWO",
    text: "Did the new do better than the usual?",
    format: "General",
    ranges: two,
    asksUsual: false,
  },
  {
    value: "COMPAREMANY",
    text: "Which of several treatments did better?",
    format: "General",
    ranges: many,
    asksUsual: true,
  },
  { value: "UPDOWN", text: "Percent change from usual to new", format: "0.0%", ranges: two, asksUsual: false },
  { value: "PERPLANT", text: "Yield per plant", format: "General", ranges: [needed("Amounts")], asksUsual: false },
  {
    value: "UNEVENNESS",
    text: "How uneven are my plants?",
    format: "0.0%",
    ranges: [needed("Plants treated alike")],
    asksUsual: false,
  },
];

/** The formula that asks it: the needed ranges, then *show* left empty, the beds, and the usual treatment's name. */
export function startFormula(
  { value, ranges }: StartQuestion,
  references: readonly (string | null)[],
  usual: string | null,
): string {
  const first = ranges.flatMap(({ optional }, at) => (optional ? [] : [references[at] ?? ""]));
  const later = ranges.flatMap(({ optional }, at) => (optional ? [references[at] ?? ""] : []));
  const given = [...first, "", ...later, usual === null ? "" : quoted(usual)];
  while (given.at(-1) === "") given.pop();
  return `=FAIRBED.${value}(${given.join(",")})`;
}
