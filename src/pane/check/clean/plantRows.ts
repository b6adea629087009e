import type { Desk } from "../../../answers/desk";
import { dateCell, type NewCell, numberCell, textCell } from "../../../host/newSheet";
import type { Cell } from "../../../nouns/cell";
import type { CellRange } from "../../../nouns/cellRange";
import type { PickTally, TalliedPlant } from "../../../nouns/findings/pickTally";
import { askNamed } from "../../askNamed";
import type { CleanTable } from "./cleanTable";
import type { Roles } from "./roles";

type Row = readonly (NewCell | null)[];

/**
 * One row per plant, headings first: TALLYPICKS of the clean copy for each of its amounts. A plant that one column of
 * amounts calls lost is lost in all of them.
 *
 * @returns the sentence of TALLYPICKS where it refuses; null where nothing names the plants or there is no amount
 */
export function plantRows(table: CleanTable, roles: Roles, desk: Desk): readonly Row[] | string | null {
  const amounts = table.columns.flatMap(({ kind }, at) => (kind === "amount" ? [at] : []));
  if (roles.plants < 0 || amounts.length === 0) return null;
  const tallies: PickTally[] = [];
  for (const at of amounts) {
    const tally = tallied(table, { ...roles, amounts: at }, desk);
    if (typeof tally === "string") return tally;
    tallies.push(tally);
  }
  const [first] = tallies;
  if (first === undefined || isPlantByPlant(table, first)) return null;
  const headings = amounts.map((at) => table.columns[at]?.heading ?? "");
  const beside = [
    ["Treatment", roles.treatments, (plant: TalliedPlant) => plant.treatment],
    ["Bed", roles.beds, (plant: TalliedPlant) => plant.bed],
  ] as const;
  const given = beside.filter(([, at]) => at >= 0);
  const header = ["Plant", ...given.map(([name]) => name), ...headings, "Picks", "First", "Last", "Status"];
  return [
    header.map((text) => textCell(text, { bold: true })),
    ...first.plants.map((plant, at) => {
      const each = tallies.map(({ plants }) => plants[at] ?? plant);
      const names = given.map(([, , of]) => of(plant));
      return [
        textCell(plant.plant),
        ...names.map((name) => (name === null ? null : textCell(name))),
        ...totals(each),
        numberCell(Math.max(...each.map(({ picks }) => picks))),
        dayOrNone(plant.first, first.yearsKnown),
        dayOrNone(plant.last, first.yearsKnown),
        textCell(statusOf(each, headings)),
      ];
    }),
  ];
}

/** A table without dates in which every plant has one row is one of totals already. */
function isPlantByPlant({ columns }: CleanTable, { plants }: PickTally): boolean {
  return !columns.some(({ kind }) => kind === "date") && plants.every(({ rows }) => rows === 1);
}

function totals(each: readonly TalliedPlant[]): readonly NewCell[] {
  const lost = each.some(isLost);
  return each.map(({ nothingRead, picked }) => {
    if (lost) return textCell("lost");
    return nothingRead ? textCell("not recorded") : numberCell(picked);
  });
}

function isLost({ status }: TalliedPlant): boolean {
  return status.startsWith("lost");
}

function statusOf(each: readonly TalliedPlant[], headings: readonly string[]): string {
  const lost = each.find(isLost);
  if (lost !== undefined) return lost.status === "lost" ? "lost" : "lost, picked later";
  const missing = each.flatMap(({ weightsMissing }, at) =>
    weightsMissing === 0 ? [] : [`${headings[at]} missing (${weightsMissing})`],
  );
  return missing.join(", ") || "ok";
}

function dayOrNone(day: number | null, yearsKnown: boolean): NewCell | null {
  return day === null || !yearsKnown ? null : dateCell(day);
}

function tallied(table: CleanTable, at: Roles & { readonly amounts: number }, desk: Desk): PickTally | string {
  const dates = table.columns.findIndex(({ kind }) => kind === "date");
  const columns: Readonly<Record<string, number>> = { ...at, dates };
  const given = Object.entries(columns).filter(([, column]) => column >= 0);
  const reply = askNamed(
    desk,
    "TALLYPICKS",
    given.map(([name, column]) => rangeOf(table, name, column)),
  );
  if ("problem" in reply) return reply.message;
  return reply.finding.finding === "pick-tally" ? reply.finding : "The picks could not be added up.";
}

function rangeOf({ columns, rows }: CleanTable, argument: string, at: number): CellRange {
  const cells = rows.map((row): readonly Cell[] => [row[at]?.content ?? null]);
  return { argument, cells: [[columns[at]?.heading ?? ""], ...cells], corner: null, zerosVerified: true };
}
