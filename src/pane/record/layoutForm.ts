import { field } from "../dom/blocks";
import { element } from "../dom/element";
import { fieldNumber } from "../plan/fieldNumber";
import { dayNumber } from "./dayNumber";

/** What the grower settles before planting, beside the plan itself. */
export interface LayoutGiven {
  readonly names: readonly string[];
  readonly plantsEach: number;
  readonly drawNumber: number;
  readonly question: string;
  readonly measure: string;
  readonly stopDate: number | null;
}

/** The fields for what is settled before planting. */
export interface LayoutForm {
  readonly root: HTMLElement;
  /** A sentence says what is missing. */
  readonly given: () => LayoutGiven | string;
  /** What was typed of treatments, question and measure so far. */
  readonly texts: () => readonly string[];
  /** Follows the plan: as many names as treatments, and its plants each until the grower types another number. */
  readonly follow: (ways: number, plantsEach: number) => void;
}

/** The time on the grower's watch as a number: a draw number like any other. */
function watchNumber(now: Date): number {
  return now.getHours() * 100 + now.getMinutes() || 2400;
}

/** The form; its draw number starts from the grower's watch. */
export function layoutForm(): LayoutForm {
  const names: HTMLInputElement[] = [];
  const nameFields = element("div", { class: "fields" });
  const each = fieldNumber("Plants of each", { start: 6, low: 1, high: 1000 });
  const draw = fieldNumber("Draw number", { start: watchNumber(new Date()), low: 1, high: 999_999 });
  const question = element("input", { value: "" });
  const measure = element("input", { value: "Total per plant (g)" });
  const stop = element("input", { type: "date" });
  const numbers = element("div", { class: "fields" }, each.root, draw.root);
  const eachInput = each.root.querySelector("input");
  let typed = false;
  eachInput?.addEventListener("input", () => {
    typed = true;
  });
  const root = element(
    "div",
    { class: "form" },
    nameFields,
    numbers,
    field("The question", question, "One thing to change, such as: does straw give more than bare soil?"),
    field("Main measure, its unit in brackets", measure),
    field("Stop date for all", stop),
  );
  const texts = () => [...names, question, measure].map(({ value }) => value);
  return { root, given, texts, follow };

  function given(): LayoutGiven | string {
    if (names.some((name) => name.value.trim() === "")) return "Name everything you compare, the usual first.";
    const [plantsEach, drawNumber] = [each.value(), draw.value()];
    if (plantsEach === null) return each.asks;
    if (drawNumber === null) return draw.asks;
    return {
      names: names.map((name) => name.value.trim()),
      plantsEach,
      drawNumber,
      question: question.value.trim(),
      measure: measure.value.trim() || "Total per plant",
      stopDate: dayNumber(stop.value),
    };
  }

  function follow(ways: number, plantsEach: number): void {
    if (!typed && eachInput !== null) eachInput.value = String(plantsEach);
    while (names.length < ways)
      names.push(element("input", { value: names.length === 0 ? "Usual" : `New ${names.length}` }));
    names.length = ways;
    nameFields.replaceChildren(...names.map((name, at) => field(at === 0 ? "The usual way" : `New way ${at}`, name)));
  }
}
