import type { Answer, Desk, Refusal } from "../../src/answers/desk";
import type { Cell } from "../../src/nouns/cell";
import type { CellRange } from "../../src/nouns/cellRange";
import type { Line, LineFormat } from "../../src/nouns/line";
import { strawFinding } from "./strawFinding";

/** The comparison that the desk answers with, and four things to look out for. */
export const comparedByHand = strawFinding({
  cautions: () => [{ caution: "C17" }, { caution: "C22" }, { caution: "C30" }, { caution: "C12" }],
});

const parameters: Readonly<Record<string, readonly string[]>> = {
  COMPARETWO: ["usual", "new", "show", "how"],
  UNEVENNESS: ["amounts", "show"],
  PLANTSNEEDED: ["change", "unevenness", "show", "treatments", "beds", "chance", "losses", "worthwhile"],
  SMALLESTCHANGE: ["plants_each", "unevenness", "show", "treatments", "beds", "chance", "direction"],
  CHANCETOSEE: ["change", "plants_each", "unevenness", "show", "treatments", "beds", "worthwhile"],
};

const lines: readonly Line[] = [
  { label: "Verdict", format: "text", value: () => "Too few plants" },
  { label: "Change", format: "percent", value: () => 1 / 3 },
  { label: "Average, new", format: "amount", value: () => 4000 },
];

/** A desk whose answers are written down by hand; it remembers what it was asked. */
export interface HandMadeDesk extends Desk {
  readonly asked: { readonly id: string; readonly given: Readonly<Record<string, readonly (readonly Cell[])[]>> }[];
}

export function handMadeDesk(): HandMadeDesk {
  const asked: HandMadeDesk["asked"] = [];
  return {
    asked,
    parameters: (id) => parameters[id]?.map((name, at) => ({ name, optional: at > 1 })) ?? null,
    ask(id, given) {
      const cells = Object.fromEntries(
        given.filter((range) => range !== null).map((range) => [range.argument, range.cells]),
      );
      asked.push({ id, given: cells });
      return reply(id, given);
    },
  };
}

function reply(id: string, given: readonly (CellRange | null)[]): Answer | Refusal {
  const typed = (name: string) => given.find((range) => range?.argument === name)?.cells[0]?.[0] ?? null;
  const show = typed("show");
  if (show === "nonsense") {
    const problem = { problem: "unknown-show", given: show, allowed: [] } as const;
    return { code: "#VALUE!", message: "“nonsense” cannot be shown here.", problem };
  }
  if (id === "COMPARETWO") {
    const line = lines.find(({ label }) => label === show) ?? lines[0];
    return answer(id, line?.value() ?? "", line?.format ?? "text");
  }
  return answer(id, planned(id, Number(typed("plants_each")), Number(typed("unevenness"))), "percent");
}

/** Made-up rules, simple enough to reckon in the head. */
function planned(id: string, plantsEach: number, unevenness: number): number | string {
  if (id === "UNEVENNESS") return 0.25;
  if (id === "PLANTSNEEDED") return 34;
  return plantsEach < 4 ? "none: too few plants" : unevenness / plantsEach;
}

function answer(id: string, cell: number | string, format: LineFormat): Answer {
  return { id, finding: comparedByHand, lines, table: () => [], cell: () => [[cell]], formats: () => [[format]] };
}
