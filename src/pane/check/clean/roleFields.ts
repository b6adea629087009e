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

const names = { plants: "Plants", treatments: "Treatments", beds: "Beds" } as const satisfies Record<
  keyof Roles,
  string
>;

export function roleFields(): RoleFields {
  const selects = { plants: choice([]), treatments: choice([]), beds: choice([]) };
  const roles = Object.keys(names) as (keyof Roles)[];
  const root = element("div", { class: "fields" }, ...roles.map((role) => field(names[role], selects[role])));
  let offered = "";
  return { root, chosen, offer };

  function chosen(): Roles {
    const [plants = -1, treatments = -1, beds = -1] = roles.map((role) => Number(selects[role].value));
    return { plants, treatments, beds };
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
