import { counted } from "../../../words/counted";
import type { Context } from "../../context";
import { button } from "../../dom/blocks";
import { element } from "../../dom/element";
import { asTrouble, troubleText } from "../../trouble";
import type { LookedAt } from "../lookedAt";
import { LEFT_AS_IT_STANDS } from "./change";
import { cleanSheet } from "./cleanSheet";
import type { CleanTable } from "./cleanTable";
import { copyOf } from "./copyOf";
import { plantRows } from "./plantRows";
import { roleFields } from "./roleFields";
import { shapeForm } from "./shapeForm";

/**
 * The form that writes a clean copy of a table on a new sheet.
 *
 * @param looked the table as it is when the button is pressed
 * @param told says what was done, wherever the grower is by then
 */
export function cleanPart(looked: () => LookedAt, context: Context, told: (sentence: string) => void): HTMLElement {
  const roles = roleFields();
  const makes = element("p", { class: "hint" });
  const form = shapeForm(looked(), context.desk, follow);
  const write = button("Write a clean copy", () => void writeCopy(), "main");
  const said = element("p", { class: "hint", role: "status" });
  const hint = "On a new sheet, with every change listed beside it. Your own cells stay as they are.";
  follow();
  return element(
    "div",
    { class: "form" },
    element("p", { class: "hint" }, hint),
    form.root,
    roles.root,
    makes,
    write,
    said,
  );

  function copy(): CleanTable {
    return copyOf(looked(), form.rules(), context.desk);
  }

  function follow(): void {
    const { columns, rows } = copy();
    roles.offer(columns);
    makes.textContent = `That makes ${counted(rows.length, "row")} and ${counted(columns.length, "column")}.`;
  }

  async function writeCopy(): Promise<void> {
    const table = copy();
    const plants = plantRows(table, roles.chosen(), context.desk);
    write.disabled = true;
    try {
      const name = await context.sheet.add(cleanSheet(table, typeof plants === "string" ? null : plants));
      told(`${summary(name, table)}${typeof plants === "string" ? ` No row per plant: ${plants}` : ""}`);
    } catch (reason) {
      said.textContent = troubleText(asTrouble(reason));
    } finally {
      write.disabled = false;
    }
  }
}

function summary(name: string, { changes }: CleanTable): string {
  const doubts = changes.filter(({ became }) => became === LEFT_AS_IT_STANDS);
  const left = new Set(doubts.map(({ where }) => where)).size;
  const many = changes.length - doubts.length;
  const done = `The clean copy stands on the sheet “${name}”, with ${counted(many, "change")} listed.`;
  return left === 0
    ? done
    : `${done} ${counted(left, "cell")} ${left === 1 ? "is" : "are"} in doubt and left as found.`;
}
