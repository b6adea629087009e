import type { DrawnLots } from "../../nouns/findings/drawnLots";
import { safetyLines } from "../../words/safety";
import { typed } from "../ask";
import { askNamed } from "../askNamed";
import type { Context } from "../context";
import { button, paragraphs, section } from "../dom/blocks";
import { element } from "../dom/element";
import type { PlanQuestion } from "../plan/planQuestion";
import { plantsEach } from "../plan/planQuestion";
import { asTrouble, troubleText } from "../trouble";
import { today } from "./dayNumber";
import { type LayoutGiven, layoutForm } from "./layoutForm";
import { recordSheet } from "./recordSheet";
import { spotRow } from "./trialLayout";

/** What draws lots for a plan and makes the sheet to plant and record on. */
export interface LayoutPart {
  readonly root: HTMLElement;
  /** To be called when the plan has changed. */
  readonly follow: (question: PlanQuestion) => void;
}

/** The form for a plan's layout, and the button that makes its record sheet. */
export function layoutPart(context: Context): LayoutPart {
  const form = layoutForm();
  const said = element("p", { class: "hint", role: "status" });
  const make = button("Draw lots and make the sheet", () => void makeSheet(), "main");
  const safety = element("div");
  const root = element("div", {}, form.root, safety, make, said);
  form.root.addEventListener("input", warn);
  let question: PlanQuestion | null = null;
  return { root, follow };

  function follow(planned: PlanQuestion): void {
    question = planned;
    form.follow(planned.ways, Math.max(1, plantsEach(planned)));
  }

  /** Before planting, a line on safety is still in time. */
  function warn(): void {
    const lines = safetyLines(form.texts());
    safety.replaceChildren(...(lines.length === 0 ? [] : [section("Safety", paragraphs(lines))]));
  }

  async function makeSheet(): Promise<void> {
    const given = form.given();
    if (question === null || typeof given === "string") return say(String(given));
    const drawn = drawnFor(context, given, question);
    if (typeof drawn === "string") return say(drawn);
    make.disabled = true;
    try {
      const { worthwhile } = question;
      const layout = { ...given, drawn, worthwhile, writtenOn: today(new Date()) };
      const name = await context.sheet.add(recordSheet(context.desk, layout));
      await context.sheet.select(name, `E${spotRow(0)}`);
      say(
        `The plan stands on the sheet “${name}”. Type each plant’s total into column E; write “lost” for a lost one.`,
      );
      await context.look();
    } catch (reason) {
      say(troubleText(asTrouble(reason)));
    } finally {
      make.disabled = false;
    }
  }

  function say(sentence: string): void {
    said.textContent = sentence;
  }
}

/** The spots drawn by lot; the desk's sentence when it refuses. */
function drawnFor(
  { desk }: Context,
  { names, plantsEach: each, drawNumber }: LayoutGiven,
  { beds }: PlanQuestion,
): DrawnLots | string {
  const column = names.map((name) => [name]);
  const reply = askNamed(desk, "DRAWLOTS", [
    typed("treatments", column),
    typed("plants_each", [[each]]),
    typed("draw_number", [[drawNumber]]),
    ...(beds === "none" ? [] : [typed("beds", [[beds]])]),
  ]);
  if ("problem" in reply) return reply.message;
  const { finding } = reply;
  return finding.finding === "drawn-lots" ? finding : "Nothing was drawn. Try another number.";
}
