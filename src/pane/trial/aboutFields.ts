import type { TrialNotes } from "../../nouns/trialNotes";
import { field } from "../dom/blocks";
import { element } from "../dom/element";
import { dateText, dayNumber } from "../record/dayNumber";
import { worthwhileField } from "./worthwhileField";

/** What the trial is about: its notes without the answers to the questions. */
export type About = Omit<TrialNotes, "answers" | "onlySheet">;

/** The fields for crop, measure, unit, place, season, stop date and worthwhile change. */
export interface AboutFields {
  readonly root: HTMLElement;
  readonly given: () => About;
  /** Fills the fields; what says this already is left as it is, so that the grower's typing can still be undone. */
  readonly show: (about: About) => void;
}

/** The texts that are asked for, each with what it may look like. */
const texts = [
  { name: "crop", label: "Crop and variety", example: "courgettes" },
  { name: "measure", label: "Main measure", example: "harvest per plant" },
  { name: "unit", label: "Its unit", example: "grams" },
  { name: "place", label: "Place", example: "Marlpit Corner" },
  { name: "season", label: "Season", example: "2023" },
] as const;

type TextName = (typeof texts)[number]["name"];

/** Longer than any of them; a novel pasted by mistake would not fit what some hosts keep. */
const mostCharacters = 120;

/** The fields, empty at the start. */
export function aboutFields(): AboutFields {
  const inputs = texts.map(({ name, label, example }) => {
    const input = element("input", { placeholder: example, maxlength: mostCharacters });
    return { name, input, root: field(label, input) };
  });
  const stop = element("input", { type: "date" });
  const worthwhile = worthwhileField();
  const roots = inputs.map(({ root }) => root);
  const fields = element("div", { class: "fields" }, ...roots, field("Stop date for all", stop));
  const root = element("div", {}, fields, worthwhile.root);
  return { root, given, show };

  function given(): About {
    const typed = (name: TextName) => inputs.find((one) => one.name === name)?.input.value.trim() ?? "";
    return {
      crop: typed("crop"),
      measure: typed("measure"),
      unit: typed("unit"),
      place: typed("place"),
      season: typed("season"),
      worthwhile: worthwhile.value(),
      stopDate: dayNumber(stop.value),
    };
  }

  function show(about: About): void {
    for (const { name, input } of inputs) if (input.value.trim() !== about[name]) input.value = about[name];
    if (dayNumber(stop.value) !== about.stopDate) stop.value = about.stopDate === null ? "" : dateText(about.stopDate);
    worthwhile.show(about.worthwhile);
  }
}
