import type { Context } from "../context";
import { choice, field } from "../dom/blocks";
import { explanationView } from "./explanationView";
import { refusalView, unknownView, unreadableView } from "./otherViews";
import type { Seen } from "./seen";
import type { View } from "./view";

/** Turns a cell into its explanation; of several calls in it the grower may choose another. */
export function viewOf(seen: Seen, context: Context, pick: (call: number) => void): View {
  const view = outcomeView(seen, context);
  if (seen.calls.length > 1) view.root.prepend(callChoice(seen, pick));
  return view;
}

function outcomeView(seen: Seen, context: Context): View {
  const { asked } = seen;
  switch (asked.outcome) {
    case "answer":
      return explanationView(seen, asked.answer, context);
    case "refusal":
      return refusalView(seen, asked.refusal, context);
    case "unreadable":
      return unreadableView(asked.argument, asked.text);
    case "unknown":
      return unknownView(seen.call.id);
  }
}

function callChoice({ calls, call }: Seen, pick: (call: number) => void): HTMLElement {
  const select = choice(calls.map(({ text }, index) => ({ value: String(index), text })));
  select.value = String(calls.indexOf(call));
  select.addEventListener("change", () => pick(Number(select.value)));
  return field(`This cell holds ${calls.length} Fairbed formulas. Explain`, select);
}
