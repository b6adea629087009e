import type { NumberFormat } from "../../host/newSheet";

/** One question that a grower may start with. */
export interface StartQuestion {
  /** The function that answers it. */
  readonly value: string;
  readonly text: string;
  readonly format: NumberFormat;
  /** The ranges it takes, as they are asked for. */
  readonly ranges: readonly string[];
}

const two = ["Usual plants", "New plants"];

export const startQuestions: readonly [StartQuestion, ...StartQuestion[]] = [
  { value: "COMPARETWO", text: "Did the new do better than the usual?", format: "General", ranges: two },
  { value: "UPDOWN", text: "Percent change from usual to new", format: "0.0%", ranges: two },
  { value: "PERPLANT", text: "Yield per plant", format: "0.0", ranges: ["Amounts"] },
  { value: "UNEVENNESS", text: "How uneven are my plants?", format: "0.0%", ranges: ["Plants treated alike"] },
];
