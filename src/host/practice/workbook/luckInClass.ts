import type { ICellData } from "@univerjs/core";
import { formula, heading, note, number, spilled, text } from "./cells";
import type { SheetPlan } from "./sheetData";

/** Grams per plant of eight courgettes from one sowing, all treated alike (invented). */
const plants: readonly number[] = [2640, 3710, 1980, 3060, 4150, 2290, 3480, 2750];
const draws = 20;

/** For a class: plants treated alike, dealt into two teams by number, and how far luck alone sets the teams apart. */
export const luckInClass: SheetPlan = {
  id: "luck-in-class",
  name: "Luck in class",
  widths: [72, 64, 64, 12, 104, 60, 12, 320, 90],
  merged: ["A13:C17", "H8:I11"],
  cells: {
    A1: heading("Plant"),
    B1: heading("Grams"),
    C1: heading("Team"),
    ...Object.fromEntries(plants.flatMap((grams, at) => plantCells(grams, at + 2))),
    C2: formula('=FAIRBED.DRAWLOTS(2,4,I2,"Treatment")'),
    A13: note(
      "Eight courgette plants from one sowing, all treated alike. Lots deal them into two teams, A and B. " +
        "Invented data for practice.",
    ),
    E1: heading("Draw number"),
    F1: heading("Lead"),
    ...Object.fromEntries(Array.from({ length: draws }, (_, at) => drawCells(at + 1)).flat()),
    H1: heading("Deal the plants yourself"),
    H2: text("Draw number: type any number"),
    I2: number(18),
    H3: text("How far is the leading team ahead?"),
    I3: formula(
      '=MAX(SUMIF(C2:C9,"A",B2:B9),SUMIF(C2:C9,"B",B2:B9))/MIN(SUMIF(C2:C9,"A",B2:B9),SUMIF(C2:C9,"B",B2:B9))-1',
      "0.0%",
    ),
    H4: text("How many of the 20 draws give 30 % or more?"),
    I4: formula(`=COUNTIF(F2:F${draws + 1},">=0.3")`, "0"),
    H5: text("The widest lead of the 20"),
    I5: formula(`=MAX(F2:F${draws + 1})`, "0.0%"),
    H6: text("How uneven are these plants?"),
    I6: formula("=FAIRBED.UNEVENNESS(B1:B9)", "0.0%"),
    H8: note(
      "Nothing was done to either team, yet one leads. With four plants each that differ by 25 %, " +
        "a lead of 30 % comes up about once in 7 such trials, by luck alone.",
    ),
  },
};

function plantCells(grams: number, row: number): readonly (readonly [string, ICellData])[] {
  return [
    [`A${row}`, text(`Plant ${row - 1}`)],
    [`B${row}`, number(grams)],
    [`C${row}`, spilled("0")],
  ];
}

/** One draw: its number, and how far its leading team is ahead. */
function drawCells(draw: number): readonly (readonly [string, ICellData])[] {
  const row = draw + 1;
  const team = (name: string) => `SUMPRODUCT((FAIRBED.DRAWLOTS(2,4,E${row},"Treatment")="${name}")*B$2:B$9)`;
  const [one, other] = [team("A"), team("B")];
  return [
    [`E${row}`, number(draw)],
    [`F${row}`, formula(`=MAX(${one},${other})/MIN(${one},${other})-1`, "0.0%")],
  ];
}
