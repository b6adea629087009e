import type { Report } from "../../nouns/report";
import { listText } from "../../words/list";
import { textsOf } from "../../words/report/textsOf";
import type { Context } from "../context";
import { section } from "../dom/blocks";
import { copyButton } from "../dom/copyButton";
import { type Child, element } from "../dom/element";
import { unbroken } from "../dom/unbroken";
import { pictureSection } from "./pictureSection";
import type { Result } from "./results";

/** The report as the pane shows it: the picture, then the three texts, each with its button to copy it. */
export function reportView(report: Report, chosen: readonly Result[], context: Context): readonly HTMLElement[] {
  const texts = textsOf(report).map(({ name, text }) =>
    section(name, [element("div", { class: "told" }, ...paragraphs(text))], copyButton(text, context)),
  );
  const parts: readonly Child[] = [missingLine(report), pictureSection(report, chosen), ...texts];
  return parts.filter((part) => part instanceof HTMLElement);
}

function paragraphs(text: string): readonly HTMLElement[] {
  return text.split(/\n+/).map((paragraph) => element("p", {}, unbroken(paragraph)));
}

function missingLine({ missing }: Report): Child {
  return missing.length === 0 ? null : element("p", { class: "hint" }, missingSentence(missing));
}

/** What a complete report would also tell. */
function missingSentence(missing: readonly string[]): string {
  return `Not complete yet. The trial's notes do not tell ${listText(missing)}.`;
}
