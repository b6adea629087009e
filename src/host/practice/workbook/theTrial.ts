import type { ICellData } from "@univerjs/core";
import { answer, formula, heading, note, number, spilled, text } from "./cells";
import { marlpitCorner } from "./marlpitCorner";
import type { SheetPlan } from "./sheetData";

/** The table's figures: change, low, high; times as much; average of each; plants of each. */
const tablePatterns = ["0.0%", "0.0%", "0.0%", "0.00", "0", "0", "0", "0"] as const;

/** A finished trial: four ways of covering the soil, one plant of each in every bed, and questions put to it. */
export const theTrial: SheetPlan = {
  id: "the-trial",
  name: "The trial",
  widths: [38, 72, 122, 76, 118, 12, 286, 196],
  merged: ["A11:E12"],
  cells: {
    A1: heading("Bed"),
    B1: heading("Bare soil"),
    C1: heading("Straw"),
    D1: heading("Woodchip"),
    E1: heading("Grass clippings"),
    ...bedCells(),
    A11: note("Marlpit Corner: grams of courgettes per plant, 24 June – 30 August 2023. Invented data for practice."),
    G1: heading("Question"),
    H1: heading("Answer"),
    G2: text("How much more does straw bear?"),
    H2: answer("=FAIRBED.UPDOWN(B1:B9,C1:C9)", "0.0%"),
    G3: text("Is that more than luck, beds left aside?"),
    H3: answer("=FAIRBED.COMPARETWO(B1:B9,C1:C9)"),
    G4: text("Is that more than luck, bed by bed?"),
    H4: answer('=FAIRBED.COMPARETWO(B1:B9,C1:C9,"answer","beds")'),
    G5: text("Grass clippings, grams per plant that lived?"),
    H5: answer("=FAIRBED.PERPLANT(E1:E9)", "0"),
    G6: text("The same, the lost plant counted as zero?"),
    H6: answer('=FAIRBED.PERPLANT(E1:E9,,,"count as zero")', "0"),
    G7: text("How uneven are plants on bare soil?"),
    H7: answer("=FAIRBED.UNEVENNESS(B1:B9)", "0.0%"),
    G8: text("What can I say about straw?"),
    H8: answer('=FAIRBED.COMPARETWO(B1:B9,C1:C9,"say","beds")'),
    G10: heading("Straw against bare soil, all figures"),
    G11: formula('=FAIRBED.UPDOWN(B1:B9,C1:C9,"table")'),
    ...Object.fromEntries(tablePatterns.map((pattern, down) => [`H${11 + down}`, spilled(pattern)])),
  },
};

/** A row for each bed: its number, then a plant of each mulch. */
function bedCells(): Record<string, ICellData> {
  const beds = [...new Set(marlpitCorner.map(({ bed }) => bed))];
  const rows = beds.map((bed) => [
    bed,
    ...marlpitCorner.filter((plant) => plant.bed === bed).map(({ grams }) => grams),
  ]);
  return Object.fromEntries(
    rows.flatMap((row, down) => row.map((value, across) => [`${"ABCDE"[across]}${down + 2}`, bedCell(value)])),
  );
}

function bedCell(value: number | string): ICellData {
  return typeof value === "number" ? number(value) : text(value);
}
