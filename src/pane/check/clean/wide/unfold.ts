import { type Cell, isEmpty } from "../../../../nouns/cell";
import { cellShown } from "../cleanCell";
import type { Shape } from "../shape";
import type { Group, WideParts } from "./wideParts";

/** Where a cell of the long table comes from: row and column from 1 in the wide one. */
export type Origin = readonly [row: number, column: number];

/** A wide table as one row for each plant and day, or for each plant. */
export interface Unfolded {
  /** Headings first. */
  readonly cells: readonly (readonly Cell[])[];
  /** As many as cells. */
  readonly origins: readonly (readonly Origin[])[];
  /** How many empty cells of each column, from 1, were taken for "nothing picked". */
  readonly taken: ReadonlyMap<number, number>;
}

type From = readonly [Cell, Origin];

/** A column of the long table: its heading, and what it holds for a row of the wide one under one of its headings. */
interface Source {
  readonly heading: From;
  readonly of: (row: number, group: Group) => From;
}

/** What is turned, and how. */
interface Wide {
  readonly cells: readonly (readonly Cell[])[];
  readonly parts: WideParts;
  readonly shape: Shape;
  /** The number of each row of plants, from 1. */
  readonly numbers: ReadonlyMap<number, number>;
}

/**
 * Turns days or treatments that stand across into rows. With treatments across every cell is a plant of its own, so
 * that its name tells the treatment as well; cells below a treatment's last plant are none.
 */
export function unfold(cells: readonly (readonly Cell[])[], parts: WideParts, shape: Shape): Unfolded {
  const wide = { cells, parts, shape, numbers: new Map(parts.rows.map((row, at) => [row, at + 1])) };
  const taken = new Map<number, number>();
  const sources = sourcesOf(wide, taken);
  const groups = parts.groups.map((group) => ({ group, last: lastPlant(wide, group) }));
  const rows = parts.rows.flatMap((row) =>
    groups.filter(({ last }) => row <= last).map(({ group }) => sources.map(({ of }) => of(row, group))),
  );
  const all = [sources.map(({ heading }) => heading), ...rows];
  return {
    cells: all.map((row) => row.map(([cell]) => cell)),
    origins: all.map((row) => row.map(([, origin]) => origin)),
    taken,
  };
}

function sourcesOf(wide: Wide, taken: Map<number, number>): readonly Source[] {
  const amounts = amountSources(wide, taken);
  if (wide.shape.layout === "picks-across") return [...labelSources(wide), acrossSource(wide, "Date"), ...amounts];
  return [plantSource(wide), acrossSource(wide, "Treatment"), ...labelSources(wide), ...amounts];
}

function at({ cells }: Wide, row: number, column: number): From {
  return [cells[row]?.[column] ?? null, [row + 1, column + 1]];
}

/** With treatments across, the name of a plant: its treatment's, and its row's or its number. */
function plantSource(wide: Wide): Source {
  const { headingRow, labels } = wide.parts;
  const [, origin] = at(wide, headingRow, labels[0] ?? 0);
  return {
    heading: ["Plant", origin],
    of: (row, { heading }) => {
      const [label, from] = at(wide, row, labels[0] ?? heading);
      const number = labels.length === 0 ? "" : cellShown(label);
      return [`${cellShown(at(wide, headingRow, heading)[0])} ${number || wide.numbers.get(row)}`, from];
    },
  };
}

function labelSources(wide: Wide): readonly Source[] {
  const { headingRow, labels } = wide.parts;
  return labels.map((column, index) => {
    const [heading, origin] = at(wide, headingRow, column);
    const name = wide.shape.layout === "picks-across" && index === 0 ? "Plant" : `Name ${index + 1}`;
    return { heading: [isEmpty(heading) ? name : heading, origin], of: (row) => at(wide, row, column) };
  });
}

function acrossSource(wide: Wide, name: string): Source {
  const { headingRow, groups } = wide.parts;
  const [, origin] = at(wide, headingRow, groups[0]?.heading ?? 0);
  return { heading: [name, origin], of: (_, group) => at(wide, headingRow, group.heading) };
}

/** As many as the widest heading has columns. */
function amountSources(wide: Wide, taken: Map<number, number>): readonly Source[] {
  const { headingRow, measureRow, groups } = wide.parts;
  const widest = groups.reduce<readonly number[]>(
    (most, { columns }) => (columns.length > most.length ? columns : most),
    [],
  );
  return widest.map((column, index) => {
    const [measure, origin] = at(wide, measureRow ?? headingRow, column);
    const name = widest.length === 1 ? "Amount" : `Amount ${index + 1}`;
    const heading = measureRow === null || isEmpty(measure) ? name : measure;
    return { heading: [heading, origin], of: (row, group) => amount(wide, [row, group.columns[index] ?? null], taken) };
  });
}

function amount(
  wide: Wide,
  [row, column]: readonly [row: number, column: number | null],
  taken: Map<number, number>,
): From {
  if (column === null) return [null, [row + 1, 1]];
  const from = at(wide, row, column);
  const { blankIsNone, layout } = wide.shape;
  if (!isEmpty(from[0]) || !blankIsNone || layout !== "picks-across") return from;
  taken.set(column + 1, (taken.get(column + 1) ?? 0) + 1);
  return [0, from[1]];
}

/** The row of a treatment's last plant; of days every plant has all. */
function lastPlant(wide: Wide, { columns }: Group): number {
  const { rows } = wide.parts;
  if (wide.shape.layout === "picks-across") return rows.at(-1) ?? -1;
  return rows.findLast((row) => columns.some((column) => !isEmpty(at(wide, row, column)[0]))) ?? -1;
}
