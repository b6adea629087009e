import type { Refusal } from "../../answers/desk";
import type { Context } from "../context";
import { element } from "../dom/element";
import { notes } from "./notes";
import type { Seen } from "./seen";
import type { View } from "./view";

/** A refused call: its sentence, which says what is wrong, where, and what to do. */
export function refusalView(seen: Seen, { code, message }: Refusal, context: Context): View {
  const shown = element("p", { class: "compared" }, `The cell shows ${code} until this is mended.`);
  return plainView([element("p", { class: "finding refusal" }, message), ...notes(seen, context), shown], message);
}

/** An argument that the pane cannot read. */
export function unreadableView(argument: string, text: string): View {
  const sentence = `The pane cannot read “${argument}”: ${text}`;
  const advice = "Put these values into cells, and point to the cells instead. The answer in the cell still stands.";
  return plainView([element("p", { class: "finding" }, sentence), element("p", {}, advice)], sentence);
}

/** A function that this Fairbed does not have. */
export function unknownView(id: string): View {
  const sentence = `This Fairbed has no function ${id}. Check its name, or load the newest Fairbed.`;
  return plainView([element("p", { class: "finding" }, sentence)], sentence);
}

function plainView(children: Parameters<typeof element>[2][], says: string): View {
  return { root: element("div", { class: "explanation" }, ...children), says, isHeld: () => false, follow: () => {} };
}
