import { findCalls } from "../../formula/findCalls";
import { ask } from "../ask";
import type { Context } from "../context";
import { field, freshId } from "../dom/blocks";
import { element } from "../dom/element";
import { asTrouble, troubleText } from "../trouble";

/** The field that names the treatments found and asks which is the usual. */
export interface UsualChoice {
  readonly root: HTMLElement;
  /** The name chosen; null to compare all pairs; undefined until one of both is chosen. */
  readonly chosen: () => string | null | undefined;
  /** Looks which treatments a comparison finds; null while its ranges are not chosen. */
  readonly look: (formula: string | null, home: string) => void;
}

/** No treatment's name: names have no spaces at their ends. */
const undecided = " ";
const likelyUsual = /\b(?:usual|control|bare|none|nothing|untreated|standard|without|no)\b/i;

/** @param changed is called when treatments were found, or another is chosen */
export function usualChoice(context: Context, changed: () => void): UsualChoice {
  const select = element("select", { onchange: changed });
  const told = element("p", { class: "hint", role: "status", id: freshId() });
  const asked = field("Which is the usual?", select);
  const root = element("div", { hidden: true }, asked, told);
  let looked: string | null = null;
  return { root, chosen, look };

  function chosen(): string | null | undefined {
    return select.value === undecided ? undefined : select.value || null;
  }

  function look(formula: string | null, home: string): void {
    root.hidden = formula === null;
    if (formula === looked) return;
    looked = formula;
    select.replaceChildren(element("option", { value: undecided }));
    told.textContent = "";
    asked.hidden = true;
    if (formula !== null) void find(formula, home);
  }

  async function find(formula: string, home: string): Promise<void> {
    const found = await treatmentsFound(formula, home, context);
    if (formula !== looked) return;
    asked.hidden = typeof found === "string";
    told.textContent = typeof found === "string" ? found : `Treatments found: ${found.join(", ")}.`;
    if (typeof found === "string") {
      // A refused comparison may be put into a cell as it is: there it says the same.
      select.replaceChildren();
    } else {
      const names = found.map((name) => element("option", { value: name }, name));
      const choose = element("option", { value: undecided }, "Choose one");
      select.replaceChildren(choose, ...names, element("option", { value: "" }, "None: compare all pairs"));
      select.value = found.find((name) => likelyUsual.test(name)) ?? undecided;
    }
    changed();
  }
}

/** The treatments' names as the comparison reads them, headings left out; a sentence when it is refused. */
async function treatmentsFound(
  formula: string,
  home: string,
  { sheet, desk }: Context,
): Promise<readonly string[] | string> {
  const [call] = findCalls(formula);
  if (call === undefined) return "";
  try {
    const asked = await ask(call, { sheet, desk, home });
    if (asked.outcome === "refusal") return asked.refusal.message;
    if (asked.outcome !== "answer" || asked.answer.finding.finding !== "many-treatments") return "";
    return asked.answer.finding.treatments.map(({ name }) => name).sort((one, other) => one.localeCompare(other));
  } catch (reason) {
    return troubleText(asTrouble(reason));
  }
}
