import type { Told } from "../nouns/explanation";
import type { PickTally } from "../nouns/findings/pickTally";
import { counted } from "./counted";
import { plainNumber } from "./plainNumber";
import { sentences } from "./sentences";

/** TALLYPICKS' finding as a cell tells it (METHODS 9.1). */
export function tellPickTally(found: PickTally): Told {
  return { finding: () => finding(found), say: () => "" };
}

/** How many plants of a tally are lost, lack a weight, or are complete. */
export function plantCounts({ plants }: PickTally): {
  readonly lost: number;
  readonly lacking: number;
  readonly complete: number;
} {
  const lost = plants.filter(({ status }) => status.startsWith("lost")).length;
  const lacking = plants.filter(({ status }) => status === "weight-missing").length;
  return { lost, lacking, complete: plants.length - lost - lacking };
}

function finding(found: PickTally): string {
  const { lost, lacking, complete } = plantCounts(found);
  const rows = counted(found.rows, "row");
  const make = found.rows === 1 ? "makes" : "make";
  const states = `${plainNumber(complete)} complete, ${plainNumber(lost)} lost, ${plainNumber(lacking)} with a weight missing`;
  return sentences(`${rows} ${make} ${counted(found.plants.length, "plant")}: ${states}.`, leftOut(found));
}

/** Rows of no plant: what was in them is in no total. */
function leftOut({ leftOut: rows }: PickTally): string {
  if (rows.length === 0) return "";
  const totals = rows.filter(({ why }) => why === "total-row").length;
  const were = rows.length === 1 ? "was" : "were";
  const why = totals === rows.length ? " of totals" : totals === 0 ? " without a plant's label" : "";
  return `${counted(rows.length, "row")}${why} ${were} left out.`;
}
