import type { Call } from "../../formula/call";
import { findCalls } from "../../formula/findCalls";
import { isTellable, type TellableFinding } from "../../nouns/report";
import { counted } from "../../words/counted";
import { aboutOf } from "../../words/report/headings";
import { verdictText } from "../../words/verdict";
import { ask } from "../ask";
import type { Context } from "../context";

/** One question that formulas of the workbook ask. */
export interface AskedCall {
  /** The same for all formulas that ask it, whatever of the answer they show. */
  readonly key: string;
  readonly sheet: string;
  /** The cells that show something of it, in the sheet's order: at least one. */
  readonly cells: readonly string[];
  readonly call: Call;
}

/** A question with its answer as it is now. */
export interface Result extends AskedCall {
  readonly finding: TellableFinding;
}

/** Every question that the workbook's formulas ask, each once. */
export async function askedCalls({ sheet, desk }: Context): Promise<readonly AskedCall[]> {
  const found = new Map<string, AskedCall & { readonly cells: string[] }>();
  for (const { sheet: home, address, formula } of await sheet.calls()) {
    for (const call of findCalls(formula)) {
      const show = desk.parameters(call.id)?.findIndex(({ name }) => name === "show") ?? -1;
      const key = keyOf(call, home, show);
      const known = found.get(key);
      if (known === undefined) found.set(key, { call, key, sheet: home, cells: [address] });
      else known.cells.push(address);
    }
  }
  return [...found.values()];
}

/** Those of the questions whose answers an audience can be told, the comparisons of plants first. */
export async function resultsOf(calls: readonly AskedCall[], { sheet, desk }: Context): Promise<readonly Result[]> {
  const results: Result[] = [];
  for (const one of calls) {
    const asked = await ask(one.call, { sheet, desk, home: one.sheet });
    if (asked.outcome !== "answer" || !isTellable(asked.answer.finding)) continue;
    results.push({ ...one, finding: asked.answer.finding });
  }
  return results.sort((one, other) => rank(one.finding) - rank(other.finding));
}

/** A call without what it shows, on its sheet. */
function keyOf({ id, arguments: given }: Call, home: string, show: number): string {
  const rest = given.map(({ text }, at) => (at === show ? "" : text));
  while (rest.at(-1) === "") rest.pop();
  return `${home}!${id}(${rest.join(",")})`;
}

/** Comparisons of plants weigh more than bare averages. */
function rank({ finding }: TellableFinding): number {
  return finding === "up-down" || finding === "totals-only" ? 1 : 0;
}

/** A result in a list to choose from: "Straw against Bare soil, in 7 beds: Up, enough to matter". */
export function resultLabel({ finding }: Result): string {
  return `${aboutOf(finding)}${setOutAs(finding)}`;
}

function setOutAs(finding: TellableFinding): string {
  switch (finding.finding) {
    case "two-treatments": {
      const { pairs, asked, verdict } = finding;
      const where = pairs === null ? "" : `, in ${counted(pairs.complete, asked === "beds" ? "bed" : "pair")}`;
      return `${where}: ${verdictText(verdict)}`;
    }
    case "many-treatments":
      return finding.beds === null ? "" : `, in ${counted(finding.beds.length, "bed")}`;
    case "many-trials":
      return `, ${counted(finding.trials.length, finding.rowIs)}`;
    case "worth-it":
      return ": does it pay?";
    case "totals-only":
      return ": totals only";
    case "up-down":
      return ": averages only";
  }
}
