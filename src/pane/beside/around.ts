import type { Call } from "../../formula/call";
import type { Caution } from "../../nouns/caution";
import type { CellRange } from "../../nouns/cellRange";
import type { TwoTreatments } from "../../nouns/findings/twoTreatments";
import type { Asked } from "../ask";
import type { Context } from "../context";
import { bedsBeside } from "./bedsBeside";
import { columnsBeside } from "./columnsBeside";
import { repeatsBeside } from "./repeatsBeside";

/** What the sheet around a cell adds to the cell's explanation. */
export interface Around {
  readonly cautions: readonly Caution[];
  /** The formula that compares within beds; null where there is none to offer. */
  readonly withinBeds: string | null;
  /** Whether several plants of a treatment stand in a bed, so that the sheet must be laid out anew for COMPAREMANY. */
  readonly laysOutAnew: boolean;
}

const nothing: Around = { cautions: [], withinBeds: null, laysOutAnew: false };
/** So many comparisons make a chance winner likely (METHODS 9.2, C36). */
const MANY = 6;

/** A call of a cell, and what became of it. */
export interface AskedCall {
  readonly call: Call;
  /** The sheet that it stands on. */
  readonly home: string;
  readonly asked: Asked;
}

/** Looks at the workbook around a comparison; what cannot be read adds nothing. */
export async function around({ call, home, asked }: AskedCall, context: Context): Promise<Around> {
  if (asked.outcome !== "answer") return nothing;
  const { finding } = asked.answer;
  if (finding.finding !== "two-treatments" && finding.finding !== "many-treatments") return nothing;
  const found = await Promise.all([
    countCaution(call, home, context),
    finding.finding === "two-treatments" ? besideTwo({ call, finding, ranges: asked.ranges }, context) : nothing,
  ]).catch(() => null);
  if (found === null) return nothing;
  const [count, beside] = found;
  return { ...beside, cautions: [...beside.cautions, ...count] };
}

async function countCaution(call: Call, home: string, { comparisons }: Context): Promise<readonly Caution[]> {
  const count = await comparisons(call, home);
  return count < MANY ? [] : [{ caution: "C36", comparisons: count }];
}

/** A comparison of two treatments, and the ranges that it read. */
interface TwoAsked {
  readonly call: Call;
  readonly finding: TwoTreatments;
  readonly ranges: readonly CellRange[];
}

async function besideTwo({ call, finding, ranges }: TwoAsked, { sheet, desk }: Context): Promise<Around> {
  const { how, usual, tried } = finding;
  if (how === "pairs" || how === "pairs ranks") return nothing;
  const [first, second] = ["usual", "new"].map((name) => ranges.find(({ argument }) => argument === name));
  if (first === undefined || second === undefined) return nothing;
  const usualStood = await columnsBeside(first, usual.name !== null, sheet);
  const triedStood = await columnsBeside(second, tried.name !== null, sheet);
  if (usualStood === null || triedStood === null) return nothing;
  const at = desk.parameters(call.id)?.findIndex(({ name }) => name === "how") ?? -1;
  const beds = at < 0 ? null : bedsBeside({ call, how: at, usual: usualStood, tried: triedStood });
  const repeated = [usualStood, triedStood].some(repeatsBeside);
  return {
    cautions: [
      ...(repeated ? [{ caution: "C02" } as const] : []),
      ...(beds === null ? [] : [{ caution: "C11" } as const]),
    ],
    withinBeds: beds?.formula ?? null,
    laysOutAnew: beds !== null && beds.formula === null,
  };
}
