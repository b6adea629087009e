import type { Context } from "../context";
import { button, folded } from "../dom/blocks";
import { element } from "../dom/element";
import { unbroken } from "../dom/unbroken";
import { asTrouble, troubleText } from "../trouble";
import { luckForm } from "./luckForm";
import { luckSheet } from "./luckSheet";

/** The fold of the part Plan that shows a class what luck does, and lays out a sheet for it. */
export function luckFold({ sheet, look }: Pick<Context, "sheet" | "look">): HTMLElement {
  const form = luckForm();
  const says = element("p", { class: "finding", role: "status" });
  const done = element("p", { class: "hint", role: "status" });
  const make = button("Make the sheet for the class", () => void makeSheet(), "main");
  const intro = "All plants are treated alike. Lots deal them into two teams, and one leads: by luck alone.";
  form.root.addEventListener("input", tell);
  return folded("Show a class what luck does", () => {
    tell();
    return [element("p", {}, intro), form.root, says, make, done];
  });

  function tell(): void {
    const lesson = form.given();
    make.disabled = typeof lesson === "string";
    says.textContent = unbroken(typeof lesson === "string" ? lesson : lesson.says);
  }

  async function makeSheet(): Promise<void> {
    const lesson = form.given();
    if (typeof lesson === "string") return;
    make.disabled = true;
    try {
      const name = await sheet.add(luckSheet(lesson));
      await sheet.select(name, "I2");
      done.textContent = `The lesson stands on the sheet “${name}”. Type another number into I2, and luck deals anew.`;
      await look();
    } catch (reason) {
      done.textContent = troubleText(asTrouble(reason));
    } finally {
      make.disabled = false;
    }
  }
}
