import { type NewCell, textCell } from "../../host/newSheet";
import type { DrawnLots, Spot } from "../../nouns/findings/drawnLots";

/** Spots in one row of the map where there are no beds. */
const across = 8;

/** The map: a row a bed, its spots in their order; separate plants in rows of eight. */
export function mapRows(drawn: DrawnLots): readonly (readonly (NewCell | null)[])[] {
  const rows = drawn.beds === null ? inRows(drawn.spots) : byBed(drawn.spots, drawn.beds);
  const width = Math.max(...rows.map(({ spots }) => spots.length));
  const numbers = Array.from({ length: width }, (_, at) => bold(drawn.beds === null ? "" : `Spot ${at + 1}`));
  return [
    [bold(drawn.beds === null ? "Spots" : "Bed"), ...numbers],
    ...rows.map(({ name, spots }) => {
      const treatments = Array.from({ length: width }, (_, at) => spots[at]?.treatment ?? null);
      return [textCell(name), ...treatments.map((treatment) => (treatment === null ? null : textCell(treatment)))];
    }),
  ];
}

interface MapRow {
  readonly name: string;
  readonly spots: readonly Spot[];
}

function byBed(spots: readonly Spot[], beds: number): readonly MapRow[] {
  return Array.from({ length: beds }, (_, at) => ({
    name: `Bed ${at + 1}`,
    spots: spots.filter(({ bed }) => bed === at + 1),
  }));
}

function inRows(spots: readonly Spot[]): readonly MapRow[] {
  return Array.from({ length: Math.ceil(spots.length / across) }, (_, at) => {
    const some = spots.slice(at * across, (at + 1) * across);
    return { name: `${some[0]?.label} to ${some.at(-1)?.label}`, spots: some };
  });
}

function bold(text: string): NewCell {
  return textCell(text, { bold: true });
}
