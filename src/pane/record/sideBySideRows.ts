import { formulaCell, type NewCell, textCell } from "../../host/newSheet";
import { spotRow, type TrialLayout } from "./trialLayout";

/** Two treatments side by side, a row a bed or a plant: each cell points at its plant's total in the list. */
export function sideBySideRows({ drawn, measure }: TrialLayout): readonly (readonly NewCell[])[] {
  const unit = /\([^()]+\)\s*$/.exec(measure)?.[0].trim() ?? "";
  const headings = drawn.treatments.map((name) => textCell(`${name} ${unit}`.trim(), { bold: true }));
  const columns = drawn.treatments.map((name) =>
    drawn.spots.flatMap(({ treatment }, at) => (treatment === name ? [spotRow(at)] : [])),
  );
  const row = drawn.beds === null ? "Plant" : "Bed";
  return [
    [textCell(row, { bold: true }), ...headings],
    ...Array.from({ length: drawn.plantsEach }, (_, at) => [
      textCell(`${row} ${at + 1}`),
      ...columns.map((rows) => pointsAt(rows[at] ?? 0)),
    ]),
  ];
}

/** An empty cell pointed at would show 0, which is a plant that bore nothing. */
function pointsAt(row: number): NewCell {
  return formulaCell(`=IF(E${row}="","",E${row})`);
}
