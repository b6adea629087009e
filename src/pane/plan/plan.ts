import type { Entry } from "../../host/sheet";
import type { Context } from "../context";
import { debounced } from "../debounced";
import { folded } from "../dom/blocks";
import { element } from "../dom/element";
import { luckFold } from "../luck/luckFold";
import { placing, type Target } from "../placing";
import { layoutFold } from "../record/layoutFold";
import { planEntries } from "./planEntries";
import { planForm } from "./planForm";
import { planResult } from "./planResult";

/** Typing is over when nothing was typed for so many milliseconds. */
const pause = 250;

/**
 * Fills the part Plan: it starts from the room there is, and says what a trial of that size can show.
 *
 * @returns answers what the form holds; to be called whenever the part is opened
 */
export function plan(context: Context, root: HTMLElement): () => void {
  const form = planForm(context, debounced(answer, pause));
  const result = element("div", { class: "explanation" });
  const place = placing(context, {
    entries,
    done: ({ address }) => context.announce(`The plan stands at ${address} now.`),
  });
  const put = folded("Put this plan into the sheet", () => [place.root]);
  const layout = layoutFold(context);
  root.replaceChildren(form.root, result, layout.root, put, luckFold(context));
  let answered = false;
  context.watched.listen(() => {
    if (!answered) return;
    form.refresh();
    place.refresh();
  });
  return open;

  function open(): void {
    if (!answered) answer();
    form.refresh();
    place.refresh();
  }

  function answer(): void {
    answered = true;
    const given = form.given();
    const { children, says } =
      typeof given === "string"
        ? { children: [element("p", { class: "finding" }, given)], says: given }
        : planResult(context.desk, given.question);
    result.replaceChildren(...children.filter((child) => child !== null));
    put.hidden = typeof given === "string";
    layout.root.hidden = put.hidden;
    if (typeof given !== "string") layout.follow(given.question);
    place.refresh();
    context.announce(says);
  }

  function entries(target: Target): readonly Entry[] | string {
    const given = form.given();
    return typeof given === "string" ? given : planEntries(context.desk, given, target);
  }
}
