import type { Entry } from "../../host/sheet";
import { contains } from "../address";
import type { Context } from "../context";
import { button, choice, field } from "../dom/blocks";
import { element } from "../dom/element";
import { goTo } from "../goTo";
import { placing, type Target } from "../placing";
import { referenceFrom, type Taken } from "../rangePicker";
import { type StartQuestion, startFormula, startQuestions } from "./startQuestions";
import { startRanges } from "./startRanges";
import { usualChoice } from "./usualChoice";
import type { View } from "./view";

/** For a cell without one of our calls: asks what the grower wants to know, and writes the formula. */
export function startView(context: Context): View {
  const asked = choice(startQuestions);
  const ranges = startRanges(context, refresh);
  const place = placing(context, { entries: (target) => entriesOf(plan(), target), done });
  const usual = usualChoice(context, place.refresh);
  const cancel = button("Start over", restart);
  let [question] = startQuestions;
  asked.addEventListener("change", restart);
  restart();
  const intro = "Click a cell with a Fairbed formula to have it explained. Or start with a question:";
  const root = element(
    "div",
    { class: "start" },
    element("p", {}, intro),
    field("What do you want to know?", asked),
    ...[ranges.root, usual.root, place.root, cancel],
  );
  return { root, says: "", isHeld: () => plan().taken.some((range) => range !== null), follow: refresh };

  function plan(): Plan {
    return { question, taken: ranges.taken(), usual: question.asksUsual ? usual.chosen() : null };
  }

  function restart(): void {
    question = startQuestions.find(({ value }) => value === asked.value) ?? question;
    ranges.ask(question);
    refresh();
  }

  function refresh(): void {
    ranges.refresh();
    const { taken } = plan();
    const home = taken[0]?.sheet ?? "";
    const whole = isWhole(plan());
    usual.look(question.asksUsual && whole ? formulaOf({ ...plan(), usual: null }, home) : null, home);
    place.root.hidden = !whole;
    cancel.hidden = taken.every((range) => range === null);
    place.refresh();
  }

  function done({ sheet, address }: Target): void {
    restart();
    goTo({ sheet, address }, context);
  }
}

/** A question as far as the grower has filled it in. */
interface Plan {
  readonly question: StartQuestion;
  readonly taken: readonly (Taken | null)[];
  /** Undefined until it is chosen. */
  readonly usual: string | null | undefined;
}

/** True when every range that is needed has been taken. */
function isWhole({ question, taken }: Plan): boolean {
  return question.ranges.every(({ optional }, at) => optional || taken[at] !== null);
}

function formulaOf({ question, taken, usual }: Plan, there: string): string {
  const references = taken.map((range) => (range === null ? null : referenceFrom(range, there)));
  return startFormula(question, references, usual ?? null);
}

function entriesOf(plan: Plan, target: Target): readonly Entry[] | string {
  const taken = plan.taken.filter((range) => range !== null);
  const isAmong = taken.some(({ sheet, address }) => sheet === target.sheet && contains(address, target.address));
  if (isAmong || taken.length === 0) return "Now click the cell in the sheet where the answer should go.";
  if (plan.usual === undefined) return "Say which treatment is the usual, or compare all pairs.";
  return [{ ...target, content: formulaOf(plan, target.sheet), format: plan.question.format }];
}
