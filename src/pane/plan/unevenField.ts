import { findCalls } from "../../formula/findCalls";
import { percentText } from "../../words/percent";
import { ask } from "../ask";
import type { Context } from "../context";
import { choice, field } from "../dom/blocks";
import { element } from "../dom/element";
import { rangePicker, referenceFrom } from "../rangePicker";
import { asTrouble, troubleText } from "../trouble";
import { unevenChoices } from "./unevenChoices";

/** The field for how uneven plants are. */
export interface UnevenField {
  readonly root: HTMLElement;
  /** A fraction; a sentence says what is missing. */
  readonly unevenness: () => number | string;
  /** The formula that measures it, as typed on a sheet; null when it is a published figure. */
  readonly source: (sheet: string) => string | null;
  readonly refresh: () => void;
}

const own = "own";
const options = [
  ...unevenChoices.map(({ text, unevenness }, at) => ({
    value: String(at),
    text: `${text}: ${percentText(unevenness)}`,
  })),
  { value: own, text: "Measure it from plants in my sheet" },
];

/** A published figure with its source, or a range of the grower's own plants. */
export function unevenField(context: Context, changed: () => void): UnevenField {
  const select = choice(options);
  const hint = element("span");
  const picker = rangePicker("Plants treated alike", context, () => void measure());
  let measured: number | string = "Select last year’s plants of one treatment, one number per plant, and take them.";
  select.addEventListener("change", tell);
  tell();
  return {
    root: element("div", {}, field("How uneven are your plants?", select, hint), picker.root),
    unevenness,
    source,
    refresh: picker.refresh,
  };

  function unevenness(): number | string {
    return select.value === own ? measured : (unevenChoices[Number(select.value)]?.unevenness ?? "");
  }

  function source(sheet: string): string | null {
    const taken = picker.taken();
    return select.value === own && taken !== null ? measuringCall(referenceFrom(taken, sheet)) : null;
  }

  function tell(): void {
    const now = unevenness();
    picker.root.hidden = select.value !== own;
    hint.textContent = select.value === own ? measuredText(now) : (unevenChoices[Number(select.value)]?.source ?? "");
  }

  async function measure(): Promise<void> {
    const taken = picker.taken();
    if (taken === null) return;
    const found = await planWith(referenceFrom(taken, ""), context);
    if (taken !== picker.taken()) return;
    measured = found;
    tell();
    changed();
  }
}

function measuredText(unevenness: number | string): string {
  if (typeof unevenness === "string") return unevenness;
  return `Plan with ${percentText(unevenness)}: the cautious end of what your plants show.`;
}

function measuringCall(reference: string): string {
  return `FAIRBED.UNEVENNESS(${reference},"plan with")`;
}

/** The upper end of the unevenness of a range; a sentence where there is none. */
async function planWith(reference: string, { sheet, desk }: Context): Promise<number | string> {
  const [call] = findCalls(`=${measuringCall(reference)}`);
  if (call === undefined) return "These cells cannot be read. Select others.";
  try {
    const asked = await ask(call, { sheet, desk, home: "" });
    if (asked.outcome === "refusal") return asked.refusal.message;
    const figure = asked.outcome === "answer" ? asked.answer.cell()[0]?.[0] : undefined;
    if (figure === 0) return "These plants are all equal, so they do not tell how plants differ. Select others.";
    return typeof figure === "number" ? figure : `These plants do not tell: ${figure ?? "not readable"}.`;
  } catch (reason) {
    return troubleText(asTrouble(reason));
  }
}
