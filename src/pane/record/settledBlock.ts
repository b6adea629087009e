import { dateCell, type NewCell, numberCell, type PlacedCells, textCell } from "../../host/newSheet";
import { planTitle, type TrialLayout } from "./trialLayout";

/** What was settled before planting, each with the day on which it was written down; what is still open has none. */
export function settledBlock(layout: TrialLayout): PlacedCells {
  const { drawn, question, measure, worthwhile, stopDate, writtenOn } = layout;
  const settled: readonly (readonly [label: string, value: NewCell | null])[] = [
    ["Question", question === "" ? null : textCell(question)],
    ["Main measure", textCell(measure)],
    ["Worthwhile change", numberCell(worthwhile, "0%")],
    ["Stop date", stopDate === null ? null : dateCell(stopDate)],
    ["The usual", textCell(drawn.treatments[0] ?? "")],
    ["Draw number", numberCell(drawn.drawNumber ?? 0, "0")],
  ];
  const day = dateCell(writtenOn);
  return {
    address: "A1",
    rows: [
      row(textCell(planTitle, { bold: true })),
      row(textCell("Plant exactly as listed: choosing or swapping afterwards undoes the draw.")),
      row(bold("Settled before planting"), bold("Written on"), bold("As written")),
      ...settled.map(([label, value]) => row(textCell(label), value === null ? null : day, value)),
    ],
  };
}

/** A label in column A, the day in column D, the value in column E. */
function row(
  label: NewCell,
  written: NewCell | null = null,
  value: NewCell | null = null,
): readonly (NewCell | null)[] {
  return [label, null, null, written, value];
}

function bold(text: string): NewCell {
  return textCell(text, { bold: true });
}
