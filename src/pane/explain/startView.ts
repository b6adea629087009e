import type { Entry } from "../../host/sheet";
import type { Context } from "../context";
import { button, choice, field } from "../dom/blocks";
import { element } from "../dom/element";
import { placing, type Target } from "../placing";
import { type RangePicker, rangePicker, referenceFrom } from "../rangePicker";
import { type StartQuestion, startQuestions } from "./startQuestions";
import type { View } from "./view";

/** For a cell without one of our calls: asks what the grower wants to know, and writes the formula. */
export function startView(context: Context): View {
  const asked = choice(startQuestions);
  const pickers = element("div");
  const place = placing(context, { entries: (target) => entriesOf(question, ranges, target), done });
  const cancel = button("Start over", restart);
  let [question] = startQuestions;
  let ranges: readonly RangePicker[] = [];
  asked.addEventListener("change", restart);
  restart();
  const intro = "Click a cell with a Fairbed formula to have it explained. Or start with a question:";
  const hint = "Select the cells in the sheet: one number per plant, the heading too.";
  const root = element(
    "div",
    { class: "start" },
    element("p", {}, intro),
    field("What do you want to know?", asked),
    element("p", { class: "hint" }, hint),
    ...[pickers, place.root, cancel],
  );
  return { root, says: "", isHeld: () => ranges.some((range) => range.taken() !== null), follow: refresh };

  function restart(): void {
    question = startQuestions.find(({ value }) => value === asked.value) ?? question;
    ranges = question.ranges.map((label) => rangePicker(label, context, refresh));
    pickers.replaceChildren(...ranges.map((range) => range.root));
    refresh();
  }

  function refresh(): void {
    for (const range of ranges) range.refresh();
    place.root.hidden = ranges.some((range) => range.taken() === null);
    cancel.hidden = ranges.every((range) => range.taken() === null);
    place.refresh();
  }

  function done({ sheet, address }: Target): void {
    restart();
    void context.sheet.select(sheet, address);
  }
}

function entriesOf(
  { value, format }: StartQuestion,
  ranges: readonly RangePicker[],
  target: Target,
): readonly Entry[] | string {
  const taken = ranges.map((range) => range.taken()).filter((range) => range !== null);
  const onRange = taken.some(({ sheet, address }) => sheet === target.sheet && isFirst(target.address, address));
  if (onRange || taken.length === 0) return "Now click the cell in the sheet where the answer should go.";
  const references = taken.map((range) => referenceFrom(range, target.sheet));
  return [{ ...target, content: `=FAIRBED.${value}(${references.join(",")})`, format }];
}

function isFirst(address: string, range: string): boolean {
  return range === address || range.startsWith(`${address}:`);
}
