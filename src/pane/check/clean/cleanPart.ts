import { quotedSheet } from "../../../formula/quoted";
import { counted } from "../../../words/counted";
import { addressOf, beyond } from "../../address";
import type { Context } from "../../context";
import { button, choice, field } from "../../dom/blocks";
import { element } from "../../dom/element";
import { asTrouble, troubleText } from "../../trouble";
import type { LookedAt } from "../lookedAt";
import { LEFT_AS_IT_STANDS } from "./change";
import { cleanSheet } from "./cleanSheet";
import { type CleanTable, cleanTable } from "./cleanTable";
import { plantRows } from "./plantRows";
import { type Roles, rolesOf } from "./roles";

/**
 * The form that writes a clean copy of a table on a new sheet.
 *
 * @param looked the table as it is when the button is pressed
 * @param told says what was done, wherever the grower is by then
 */
export function cleanPart(looked: () => LookedAt, context: Context, told: (sentence: string) => void): HTMLElement {
  const { columns } = copyOf(looked(), false);
  const roles = roleFields(columns);
  const above = element("input", { type: "checkbox" });
  const write = button("Write a clean copy", () => void writeCopy(), "main");
  const said = element("p", { class: "hint", role: "status" });
  return element(
    "div",
    { class: "form" },
    element(
      "p",
      { class: "hint" },
      "On a new sheet, with every change listed beside it. Your own cells stay as they are.",
    ),
    roles.root,
    element("label", { class: "result" }, above, "An empty date or name means the one above it"),
    write,
    said,
  );

  async function writeCopy(): Promise<void> {
    const table = copyOf(looked(), above.checked);
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

function copyOf(looked: LookedAt, blankIsAbove: boolean): CleanTable {
  const { corner } = looked.range;
  const nameOf = (row: number, column: number) =>
    corner === null ? "" : `${quotedSheet(corner.sheet)}!${addressOf(beyond(corner, row - 1, column - 1))}`;
  return cleanTable(looked, { blankIsAbove, nameOf });
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

const roleNames = { plants: "Plants", treatments: "Treatments", beds: "Beds" } as const;

interface RoleFields {
  readonly root: HTMLElement;
  readonly chosen: () => Roles;
}

/** Which column is which: as the headings say, until the grower says otherwise. */
function roleFields(columns: CleanTable["columns"]): RoleFields {
  const labels = columns.flatMap(({ kind, heading }, at) =>
    kind === "label" ? [{ value: String(at), text: heading }] : [],
  );
  const proposed = rolesOf(columns);
  const pick = (role: keyof Roles) => {
    const select = choice([{ value: "-1", text: "no column" }, ...labels]);
    select.value = String(proposed[role]);
    return select;
  };
  const selects = { plants: pick("plants"), treatments: pick("treatments"), beds: pick("beds") };
  const fields = (Object.keys(roleNames) as (keyof Roles)[]).map((role) => field(roleNames[role], selects[role]));
  return {
    root: element("div", { class: "fields", hidden: labels.length === 0 }, ...fields),
    chosen: () => ({
      plants: Number(selects.plants.value),
      treatments: Number(selects.treatments.value),
      beds: Number(selects.beds.value),
    }),
  };
}
