import type { Desk } from "../../answers/desk";
import { quoted } from "../../formula/quoted";
import type { NumberFormat } from "../../host/newSheet";
import { formulaCell, type NewCell, textCell } from "../../host/newSheet";
import { formulaOf } from "../plan/deskCall";
import { places, spotRow, standsSideBySide, type TrialLayout } from "./trialLayout";

/** What the record sheet asks: a question, what is shown, and how. */
type Asked = readonly [question: string, show: string, format: NumberFormat];

const ofTwo: readonly Asked[] = [
  ["Is the difference more than luck?", "answer", "General"],
  ["How much more or less?", "Change", "0.0%"],
  ["At the lowest", "Change low", "0.0%"],
  ["At the highest", "Change high", "0.0%"],
  ["What can I say?", "say", "General"],
];
const ofMany: readonly Asked[] = [
  ["Is any of them more than luck?", "answer", "General"],
  ["What can I say?", "say", "General"],
];

/** The questions with their formulas, two columns further on. */
export function answerRows(
  desk: Desk,
  layout: TrialLayout,
  firstOfTable: number,
): readonly (readonly (NewCell | null)[])[] {
  const two = standsSideBySide(layout.drawn);
  const asked = two ? ofTwo : ofMany;
  return [
    [textCell("Answers, once the harvest is in", { bold: true }), null, null],
    ...asked.map(([question, show, format]) => {
      const formula = two ? compareTwo(desk, layout, { show, firstOfTable }) : compareMany(desk, layout, show);
      return [textCell(question), null, formulaCell(formula, { format })];
    }),
  ];
}

/** The whole table of several treatments. */
export function manyTable(desk: Desk, layout: TrialLayout): string {
  return compareMany(desk, layout, "table");
}

function compareTwo(
  desk: Desk,
  { drawn }: TrialLayout,
  { show, firstOfTable }: { readonly show: string; readonly firstOfTable: number },
): string {
  const last = firstOfTable + drawn.plantsEach;
  return formulaOf(desk, "COMPARETWO", {
    usual: `I${firstOfTable}:I${last}`,
    new: `J${firstOfTable}:J${last}`,
    show: quoted(show),
    how: drawn.beds === null ? "" : quoted("beds"),
    worthwhile: places.worthwhile,
  });
}

function compareMany(desk: Desk, { drawn }: TrialLayout, show: string): string {
  const column = (letter: string) => `${letter}${places.heading}:${letter}${spotRow(drawn.spots.length - 1)}`;
  return formulaOf(desk, "COMPAREMANY", {
    amounts: column("E"),
    treatments: column("C"),
    show: quoted(show),
    beds: drawn.beds === null ? "" : column("B"),
    usual: places.usual,
    worthwhile: places.worthwhile,
  });
}
