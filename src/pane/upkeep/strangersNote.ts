import "./upkeep.css";
import type { Upkeep } from "../../host/upkeep";
import { button } from "../dom/blocks";
import { element } from "../dom/element";
import { asTrouble, troubleText, unlessTrouble } from "../trouble";

/**
 * Tells of cells that show #NAME? because the workbook was opened without Fairbed, and enters them anew when asked.
 * Stays out of sight while there are none.
 */
export function strangersNote(upkeep: Upkeep): HTMLElement {
  const told = element("p");
  const repair = button("Enter them again", () => void enter(), "main");
  const root = element("section", { class: "upkeep", role: "status", hidden: true }, told, repair);
  void look();
  return root;

  async function look(): Promise<void> {
    const { length } = await upkeep.strangers().catch(unlessTrouble([]));
    const cells = length === 1 ? "1 cell shows" : `${length} cells show`;
    told.textContent = `${cells} #NAME? because the workbook was opened without Fairbed.`;
    root.hidden = length === 0;
  }

  async function enter(): Promise<void> {
    try {
      const found = await upkeep.strangers();
      await upkeep.enterAnew(found);
      told.textContent =
        found.length === 1 ? "1 formula was entered again." : `${found.length} formulas were entered again.`;
      repair.hidden = true;
    } catch (reason) {
      told.textContent = troubleText(asTrouble(reason));
    }
  }
}
