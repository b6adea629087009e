import { element } from "./element";
import { unbroken } from "./unbroken";

/** A table as data: the first cell of each row names it. */
export interface TablePlan {
  /** Stands above the table. */
  readonly caption: string;
  readonly header: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** The table on the page; columns after the first are set to the right, as figures are. */
export function table({ caption, header, rows }: TablePlan): HTMLTableElement {
  return element(
    "table",
    {},
    element("caption", {}, caption),
    element("thead", {}, element("tr", {}, ...header.map((text) => element("th", { scope: "col" }, text)))),
    element("tbody", {}, ...rows.map(row)),
  );
}

function row([name = "", ...rest]: readonly string[]): HTMLElement {
  const cells = rest.map((text) => element("td", {}, unbroken(text)));
  return element("tr", {}, element("th", { scope: "row" }, name), ...cells);
}
