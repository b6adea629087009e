import type { Call } from "../../formula/call";
import type { Caution } from "../../nouns/caution";
import type { CellRange } from "../../nouns/cellRange";
import type { Finding } from "../../nouns/finding";
import type { ManyTreatments } from "../../nouns/findings/manyTreatments";
import type { TwoTreatments } from "../../nouns/findings/twoTreatments";
import type { Asked } from "../ask";
import type { Context } from "../context";
import { unlessTrouble } from "../trouble";
import { bedsBeside, type InBeds } from "./bedsBeside";
import { columnsBeside, type Stood } from "./columnsBeside";
import { manyBeside } from "./manyBeside";
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

/** A call as it stands in a cell, and what became of it. */
export interface AskedInCell {
  readonly call: Call;
  /** The sheet that it stands on. */
  readonly home: string;
  readonly asked: Asked;
}

/** Looks at the workbook around a comparison; what cannot be read adds nothing. */
export async function around({ call, home, asked }: AskedInCell, context: Context): Promise<Around> {
  if (asked.outcome !== "answer") return nothing;
  const { finding } = asked.answer;
  if (finding.finding !== "two-treatments" && finding.finding !== "many-treatments") return nothing;
  const [count, beside] = await Promise.all([
    countCaution(call, home, context).catch(unlessTrouble([])),
    besideComparison({ call, finding, ranges: asked.ranges }, context).catch(unlessTrouble(nothing)),
  ]);
  return { ...beside, cautions: [...beside.cautions, ...count] };
}

async function countCaution(call: Call, home: string, { comparisons }: Context): Promise<readonly Caution[]> {
  const count = await comparisons(call, home);
  return count < MANY ? [] : [{ caution: "C36", comparisons: count }];
}

/** A comparison and the ranges that it read. */
interface Compared<Found extends Finding> {
  readonly call: Call;
  readonly finding: Found;
  readonly ranges: readonly CellRange[];
}

function besideComparison(
  { call, finding, ranges }: Compared<TwoTreatments | ManyTreatments>,
  context: Context,
): Promise<Around> {
  return finding.finding === "two-treatments"
    ? besideTwo({ call, finding, ranges }, context)
    : besideMany({ call, finding, ranges }, context);
}

async function besideTwo({ call, finding, ranges }: Compared<TwoTreatments>, context: Context): Promise<Around> {
  const { how, usual, tried } = finding;
  if (how === "pairs" || how === "pairs ranks") return nothing;
  const [first, second] = ["usual", "new"].map((name) => ranges.find(({ argument }) => argument === name));
  if (first === undefined || second === undefined) return nothing;
  const usualStood = await columnsBeside(first, usual.name !== null, context.sheet);
  const triedStood = await columnsBeside(second, tried.name !== null, context.sheet);
  if (usualStood === null || triedStood === null) return nothing;
  const source = (argument: string) => call.arguments[argumentAt(call, argument, context)]?.text ?? "";
  const options = { worthwhile: source("worthwhile"), lostPlants: source("lost_plants") };
  const at = argumentAt(call, "how", context);
  const stood = { usual: usualStood, tried: triedStood };
  return told([usualStood, triedStood], bedsBeside({ call, how: at, options, ...stood }));
}

async function besideMany({ call, finding, ranges }: Compared<ManyTreatments>, context: Context): Promise<Around> {
  const [amounts, treatments] = ["amounts", "treatments"].map((name) => ranges.find((one) => one.argument === name));
  if (amounts === undefined || treatments === undefined) return nothing;
  const headed = isHeaded(amounts, finding);
  const stood = await columnsBeside(amounts, headed, context.sheet);
  if (stood === null) return nothing;
  if (finding.beds !== null) return told([stood], null);
  const at = { beds: argumentAt(call, "beds", context), how: argumentAt(call, "how", context) };
  const names = treatments.cells.slice(headed ? 1 : 0).map(([name = null]) => name);
  const ownUnevenness = finding.how === "own unevenness";
  return told([stood], manyBeside({ call, at, amounts: stood, treatments: names, ownUnevenness }));
}

/** Whether the amounts' first cell was read as a heading: then it is a text, and none of the plants. */
function isHeaded({ cells }: CellRange, { treatments, leftOut }: ManyTreatments): boolean {
  const places = treatments.flatMap(({ plants, lost, notRecorded }) => [
    ...plants.map(({ place }) => place),
    ...lost,
    ...notRecorded,
  ]);
  return typeof cells[0]?.[0] === "string" && ![...places, ...leftOut].some(({ row }) => row === 1);
}

function argumentAt({ id }: Call, argument: string, { desk }: Context): number {
  return desk.parameters(id)?.findIndex(({ name }) => name === argument) ?? -1;
}

/** What the columns beside the ranges of a comparison say of picks and of beds. */
function told(stood: readonly Stood[], beds: InBeds | null): Around {
  const shared = beds?.layout === "shared" ? beds : null;
  return {
    cautions: [
      ...(stood.some(repeatsBeside) ? [{ caution: "C02" } as const] : []),
      ...(beds === null ? [] : [{ caution: beds.layout === "shared" ? "C11" : "C18" } as const]),
    ],
    withinBeds: shared?.formula ?? null,
    laysOutAnew: shared !== null && shared.formula === null,
  };
}
