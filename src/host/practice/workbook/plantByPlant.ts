import type { ICellData } from "@univerjs/core";
import { answer, formula, heading, note, number, spilled, text } from "./cells";
import { marlpitCorner, type TrialPlant } from "./marlpitCorner";
import type { SheetPlan } from "./sheetData";

/** The table's columns from H on: change, range, verdict, plants, lost, average, beds removed, low, high, p, letters. */
const patterns = ["0.0%", "0", "0", "0", "0", "0", "0", "0.0%", "0.0%", "0.000"] as const;
const tableTop = 11;

/** The same trial in long form, one plant a row, as COMPAREMANY takes it. */
export const plantByPlant: SheetPlan = {
  id: "plant-by-plant",
  name: "Plant by plant",
  widths: [58, 44, 118, 130, 12, 352, 196, 120, 160, 56, 44, 70, 150, 96, 96, 70, 60],
  merged: ["F8:G9"],
  cells: {
    A1: heading("Plant"),
    B1: heading("Bed"),
    C1: heading("Mulch"),
    D1: heading("Grams"),
    ...plantCells(),
    F1: heading("Question"),
    G1: heading("Answer"),
    F2: text("Which mulch bears more than bare soil, bed by bed?"),
    G2: answer('=FAIRBED.COMPAREMANY(D1:D33,C1:C33,,B1:B33,"Bare soil")'),
    F3: text("The same, beds left aside?"),
    G3: answer('=FAIRBED.COMPAREMANY(D1:D33,C1:C33,,,"Bare soil")'),
    F4: text("Which of them can be told apart, bed by bed?"),
    G4: answer("=FAIRBED.COMPAREMANY(D1:D33,C1:C33,,B1:B33)"),
    F5: text("What can I say?"),
    G5: answer('=FAIRBED.COMPAREMANY(D1:D33,C1:C33,"say",B1:B33,"Bare soil")'),
    F6: text("How uneven are plants treated alike, within a bed?"),
    G6: answer('=FAIRBED.COMPAREMANY(D1:D33,C1:C33,"Unevenness",B1:B33,"Bare soil")', "0.0%"),
    F8: note("Marlpit Corner again, one plant a row, down the slope as drawn by lot. Invented data for practice."),
    F10: heading("Every mulch against bare soil, all figures"),
    [`F${tableTop}`]: formula('=FAIRBED.COMPAREMANY(D1:D33,C1:C33,"table",B1:B33,"Bare soil")'),
    ...tableCells(),
  },
};

function plantCells(): Record<string, ICellData> {
  const down = marlpitCorner.toSorted((one, other) => one.bed - other.bed || one.spot - other.spot);
  return Object.fromEntries(
    down.flatMap((plant, at) => rowOf(plant).map((cell, across) => [`${"ABCD"[across]}${at + 2}`, cell])),
  );
}

function rowOf({ bed, spot, mulch, grams }: TrialPlant): readonly ICellData[] {
  return [text(`B${bed}-${spot}`), number(bed), text(mulch), typeof grams === "number" ? number(grams) : text(grams)];
}

/** Four treatments below the header, then p and unevenness. */
function tableCells(): Record<string, ICellData> {
  const rows = [1, 2, 3, 4].flatMap((down) =>
    patterns.map((pattern, across) => [`${"GHIJKLMNOP"[across]}${tableTop + down}`, spilled(pattern)] as const),
  );
  return {
    ...Object.fromEntries(rows),
    [`G${tableTop + 5}`]: spilled("0.000"),
    [`G${tableTop + 6}`]: spilled("0.0%"),
  };
}
