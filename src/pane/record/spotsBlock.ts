import { formulaCell, type NewCell, numberCell, type PlacedCells, textCell } from "../../host/newSheet";
import { places, type TrialLayout } from "./trialLayout";

/** The list of spots as drawn, with empty columns for what each plant gives and what became of it. */
export function spotsBlock({ drawn }: TrialLayout): PlacedCells {
  const headings = ["Spot", "Bed", "Treatment", "Label"].map((heading) => textCell(heading, { bold: true }));
  const measure = formulaCell(`=${places.measure}`, { bold: true });
  const notes = textCell("Notes: lost when, why", { bold: true });
  return {
    address: `A${places.heading}`,
    rows: [
      [...headings, measure, notes],
      ...drawn.spots.map(({ spot, bed, treatment, label }): readonly (NewCell | null)[] => {
        const inBed = bed === null ? null : numberCell(bed);
        return [numberCell(spot), inBed, textCell(treatment), textCell(label), null, null];
      }),
    ],
  };
}
