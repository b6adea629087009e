import type { Desk } from "../../answers/desk";
import type { NumberFormat } from "../../host/newSheet";
import { blankCell, formulaCell, type NewSheet, type PlacedCells, textCell } from "../../host/newSheet";
import { answerRows, manyTable } from "./answerRows";
import { mapRows } from "./mapRows";
import { settledBlock } from "./settledBlock";
import { sideBySideRows } from "./sideBySideRows";
import { spotsBlock } from "./spotsBlock";
import { places, standsSideBySide, type TrialLayout } from "./trialLayout";

/** Spot, bed, treatment, label, total, notes, a gap; then the columns beside the list. */
const widths = [46, 46, 130, 92, 140, 160, 16];
const widthBeside = 124;
/**
 * The table of several treatments: change, range, verdict, plants, lost, two averages, change low and high, p,
 * letters.
 */
const tableColumns = 12;

/** How its columns are shown, from the second on. A kilogram or a pound needs its grams or ounces, a gram no parts. */
function tableFormats(measure: string): readonly NumberFormat[] {
  const average = /\((?:kg|kilo|lb|pound|l\b|m\b)/i.test(measure) ? "0.000" : "0.0";
  const counts: readonly NumberFormat[] = ["0", "0"];
  return ["0.0%", "General", "General", ...counts, average, average, "0.0%", "0.0%", "0.000", "General"];
}

/**
 * The sheet that a trial is planted and recorded on: what was settled before planting, the spots as drawn with room for
 * the harvest, a map of the beds, and the formulas that answer once the harvest is in.
 *
 * @param desk knows the order of the functions' arguments
 */
export function recordSheet(desk: Desk, layout: TrialLayout): NewSheet {
  const map = mapRows(layout.drawn);
  const below = places.heading + 1 + map.length + 1;
  const answers = answerRows(desk, layout, below + 1);
  const beside = Math.max(map[0]?.length ?? 0, tableColumns);
  return {
    name: "Trial plan",
    widths: [...widths, ...Array.from({ length: beside }, () => widthBeside)],
    blocks: [
      settledBlock(layout),
      spotsBlock(layout),
      { address: `${places.beside}${places.answers}`, rows: answers },
      headed(places.heading, layout.drawn.beds === null ? "Map of the spots" : "Map of the beds"),
      { address: `${places.beside}${places.heading + 1}`, rows: map },
      ...compared(desk, layout, below),
    ],
  };
}

function headed(row: number, heading: string): PlacedCells {
  return { address: `${places.beside}${row}`, rows: [[textCell(heading, { bold: true })]] };
}

/** Below the map: two treatments side by side, or the table of several, which spills down from there. */
function compared(desk: Desk, layout: TrialLayout, row: number): readonly PlacedCells[] {
  const address = `${places.beside}${row + 1}`;
  if (!standsSideBySide(layout.drawn)) {
    const table = formulaCell(manyTable(desk, layout), { bold: true });
    const filled = layout.drawn.treatments.map(() => tableFormats(layout.measure).map((format) => blankCell(format)));
    return [headed(row, "All the numbers"), { address, rows: [[table]] }, { address: `I${row + 2}`, rows: filled }];
  }
  return [headed(row, "Side by side: fills itself from the list"), { address, rows: sideBySideRows(layout) }];
}
