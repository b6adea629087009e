import { answer, heading, note, number, text } from "./cells";
import type { SheetPlan } from "./sheetData";

/** Season totals of three rows of strawberries, all that was kept (invented). */
export const totalsKept: SheetPlan = {
  id: "totals-only",
  name: "Totals only",
  widths: [110, 70, 70, 20, 340, 300],
  merged: ["A6:C9"],
  cells: {
    A1: heading("Strawberries"),
    B1: heading("Fruit"),
    C1: heading("Plants"),
    A2: text("No net"),
    B2: number(412),
    C2: number(30),
    A3: text("Coarse net"),
    B3: number(655),
    C3: number(30),
    A4: text("Fine net"),
    B4: number(640),
    C4: number(29),
    A6: note("One row of strawberries under each net, and nobody wrote plants down. Invented data for practice."),
    E1: heading("Question"),
    F1: heading("Answer"),
    E2: text("Coarse net against none: how much more a plant?"),
    F2: answer('=FAIRBED.TOTALSONLY(B2,C2,B3,C3,"Change")', "0.0%"),
    E3: text("Could that be luck?"),
    F3: answer("=FAIRBED.TOTALSONLY(B2,C2,B3,C3)"),
    E4: text("Fine net against none?"),
    F4: answer('=FAIRBED.TOTALSONLY(B2,C2,B4,C4,"Change")', "0.0%"),
    E5: text("Fine net against coarse net?"),
    F5: answer("=FAIRBED.TOTALSONLY(B3,C3,B4,C4)"),
    E6: text("What could fool us?"),
    F6: answer('=FAIRBED.TOTALSONLY(B2,C2,B3,C3,"cautions")'),
  },
};
