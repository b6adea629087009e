import { choice, field } from "../../dom/blocks";
import { element } from "../../dom/element";
import type { CleanTable } from "./cleanTable";
import { type Roles, rolesOf } from "./roles";

/** The fields that say which column is which. */
export interface RoleFields {
  readonly root: HTMLElement;
  readonly chosen: () => Roles;
  /** Offers the columns of another table, each role as its headings say. */
  readonly offer: (columns: CleanTable["columns"]) => void;
}

const roles = ["plants", "treatments", "beds"] as const satisfies readonly (keyof Roles)[];
const names = { plants: "Plants", treatments: "Treatments", beds: "Beds" } as const;

/** The fields, each with "no column" until columns are offered. */
export function roleFields(): RoleFields {
  const selects = { plants: choice([]), treatments: choice([]), beds: choice([]) };
  const root = element("div", { class: "fields" }, ...roles.map((role) => field(names[role], selects[role])));
  let offered = "";
  return { root, chosen, offer };

  function chosen(): Roles {
    const at = (role: keyof Roles) => Number(selects[role].value);
    return { plants: at("plants"), treatments: at("treatments"), beds: at("beds") };
  }

  function offer(columns: CleanTable["columns"]): void {
    const labels = columns.flatMap(({ kind, heading }, at) =>
      kind === "label" ? [[String(at), heading] as const] : [],
    );
    // what the grower chose stays while the columns are what they were
    const now = JSON.stringify(labels);
    if (now === offered) return;
    offered = now;
    const proposed = rolesOf(columns);
    root.hidden = labels.length === 0;
    for (const role of roles) {
      const options = [["-1", "no column"] as const, ...labels];
      selects[role].replaceChildren(...options.map(([value, text]) => element("option", { value }, text)));
      selects[role].value = String(proposed[role]);
    }
  }
}
