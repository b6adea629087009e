import type { Sheet } from "../../host/sheet";
import type { Kept, Upkeep } from "../../host/upkeep";
import { firstCell } from "../address";
import { button, folded } from "../dom/blocks";
import { element } from "../dom/element";
import { asTrouble, troubleText } from "../trouble";

/**
 * For colleagues without Fairbed, who would see #NAME?: replaces the selected cell's formula by what it shows, and
 * brings the formulas back when asked, the last one first.
 */
export function keepAsText(sheet: Sheet, upkeep: Upkeep): HTMLElement {
  const told = element("p", { role: "status" });
  const keep = button("Keep the selected cell as text", () => void doing(replace));
  const back = button("Bring the formula back", () => void doing(restore));
  /** The one to be brought back next stands last. */
  const kept: Kept[] = [];
  back.hidden = true;
  const hint = "A colleague without Fairbed sees #NAME? where our formulas are. Text can be read by everyone.";
  return folded("For colleagues without Fairbed", () => [
    element("p", { class: "hint" }, hint),
    element("div", { class: "buttons" }, keep, back),
    told,
  ]);

  async function doing(work: () => Promise<string>): Promise<void> {
    try {
      told.textContent = await work();
    } catch (reason) {
      told.textContent = troubleText(asTrouble(reason));
    }
    back.hidden = kept.length === 0;
  }

  async function replace(): Promise<string> {
    const { sheet: name, address } = await sheet.selection();
    const replaced = await upkeep.keepAsText(name, firstCell(address));
    if (replaced === null) return `${firstCell(address)} holds no formula.`;
    kept.push(replaced);
    return `${replaced.address} holds plain text now and no longer follows the sheet. You can bring the formula back here.`;
  }

  async function restore(): Promise<string> {
    const last = kept.pop();
    if (last === undefined) return "";
    try {
      await upkeep.bringBack(last);
    } catch (reason) {
      kept.push(last);
      throw reason;
    }
    const next = kept.at(-1);
    const more = next === undefined ? "" : ` Press once more for ${firstCell(next.address)}.`;
    return `The formula is back in ${firstCell(last.address)}.${more}`;
  }
}
