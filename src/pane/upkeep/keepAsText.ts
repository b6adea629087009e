import type { Sheet } from "../../host/sheet";
import type { Kept, Upkeep } from "../../host/upkeep";
import { firstCell } from "../address";
import { button, folded } from "../dom/blocks";
import { element } from "../dom/element";
import { asTrouble, troubleText } from "../trouble";

/**
 * For colleagues without Fairbed, who would see #NAME?: replaces the selected cell's formula by what it shows, and
 * brings the formula back when asked.
 */
export function keepAsText(sheet: Sheet, upkeep: Upkeep): HTMLElement {
  const told = element("p", { role: "status" });
  const keep = button("Keep the selected cell as text", () => void doing(replace));
  const back = button("Bring the formula back", () => void doing(restore));
  let kept: Kept | null = null;
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
    back.hidden = kept === null;
  }

  async function replace(): Promise<string> {
    const { sheet: name, address } = await sheet.selection();
    const replaced = await upkeep.keepAsText(name, firstCell(address));
    if (replaced === null) return `${firstCell(address)} holds no formula.`;
    kept = replaced;
    return `${kept.address} holds plain text now and no longer follows the sheet. You can bring the formula back here.`;
  }

  async function restore(): Promise<string> {
    if (kept === null) return "";
    const { address } = kept;
    await upkeep.bringBack(kept);
    kept = null;
    return `The formula is back in ${firstCell(address)}.`;
  }
}
