import type { Answer, Desk, Refusal } from "../../answers/desk";
import { typed } from "../ask";
import { askNamed } from "../askNamed";

/** Values for a function's parameters by name; missing ones are left out. */
export type Values = Readonly<Record<string, number | string | null>>;

/** Asks the desk with values instead of cells. */
export function askValues(desk: Desk, id: string, values: Values): Answer | Refusal {
  const given = Object.entries(values).flatMap(([name, value]) => (value === null ? [] : [typed(name, [[value]])]));
  return askNamed(desk, id, given);
}

/** The formula that asks the same in a cell; `sources` are the arguments as they are typed. */
export function formulaOf(desk: Desk, id: string, sources: Readonly<Record<string, string>>): string {
  const args = (desk.parameters(id) ?? []).map(({ name }) => sources[name] ?? "");
  while (args.at(-1) === "") args.pop();
  return `=FAIRBED.${id}(${args.join(",")})`;
}
