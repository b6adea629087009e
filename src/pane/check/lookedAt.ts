import type { Call } from "../../formula/call";
import { findCalls } from "../../formula/findCalls";
import { quoted, quotedSheet } from "../../formula/quoted";
import type { Selection } from "../../host/sheet";
import type { CellRange } from "../../nouns/cellRange";
import type { Finding } from "../../nouns/finding";
import type { LookedOver } from "../../nouns/findings/lookedOver";
import { addressOf, beyond } from "../address";
import { ask, typed } from "../ask";
import { askNamed } from "../askNamed";
import type { Context } from "../context";
import { type CallBlock, callBlocks } from "./callBlocks";

/** Cells that were looked over together, and what LOOKOVER says of them. */
export interface LookedAt {
  /** "'Pick log'!A1:G332" */
  readonly reference: string;
  /** The formula that says the same in a cell. */
  readonly formula: string;
  readonly range: CellRange;
  readonly found: LookedOver;
}

type Asking = Pick<Context, "sheet" | "desk">;

/** Whether a selection names cells to look over: more cells than one, or one with a formula of ours. */
export function isCheckable({ address, formula }: Selection): boolean {
  return address.includes(":") || findCalls(formula).length > 0;
}

/** Looks over the selected cells, or those that the selected cell's formula reads. Rejects with the port's troubles. */
export async function lookedAt(selection: Selection, asking: Asking): Promise<readonly LookedAt[]> {
  const { sheet, address, formula } = selection;
  if (address.includes(":")) {
    return over({ cells: await asking.sheet.read(address, sheet), kind: null }, asking);
  }
  const looked: LookedAt[] = [];
  for (const call of findCalls(formula)) {
    if (call.id === "LOOKOVER") looked.push(...(await asCalled(call, sheet, asking)));
    else for (const block of await callBlocks(call, sheet, asking)) looked.push(...over(block, asking));
  }
  return looked.filter(({ reference }, at) => looked.findIndex((other) => other.reference === reference) === at);
}

/** A cell of LOOKOVER's own is asked as it stands, with the kind and the limits that were typed there. */
async function asCalled(call: Call, home: string, asking: Asking): Promise<readonly LookedAt[]> {
  const asked = await ask(call, { ...asking, home });
  const [range] = "ranges" in asked ? asked.ranges : [];
  if (asked.outcome !== "answer" || range === undefined || range.corner === null) return [];
  return seen(range, asked.answer.finding, `=FAIRBED.${call.text.replace(/^FAIRBED\./i, "")}`);
}

function over({ cells: { cells, corner }, kind }: CallBlock, { desk }: Asking): readonly LookedAt[] {
  const range: CellRange = { argument: "cells", cells, corner, zerosVerified: true };
  const reply = askNamed(desk, "LOOKOVER", [range, ...(kind === null ? [] : [typed("kind", [[kind]])])]);
  if ("problem" in reply) return [];
  const kindTyped = kind === null ? "" : `,,${quoted(kind)}`;
  return seen(range, reply.finding, `=FAIRBED.LOOKOVER(${referenceOf(range)}${kindTyped})`);
}

function seen(range: CellRange, finding: Finding, formula: string): readonly LookedAt[] {
  if (finding.finding !== "looked-over") return [];
  return [{ reference: referenceOf(range), formula, range, found: finding }];
}

function referenceOf({ corner, cells }: CellRange): string {
  if (corner === null) return "";
  const last = beyond(corner, cells.length - 1, (cells[0]?.length ?? 1) - 1);
  return `${quotedSheet(corner.sheet)}!${addressOf(corner)}:${addressOf(last)}`;
}
