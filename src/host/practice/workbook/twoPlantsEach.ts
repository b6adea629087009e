import { answer, formula, heading, note, number, text } from "./cells";
import type { SheetPlan } from "./sheetData";

/** A headline that miscounts its percent, made from two plants each (invented). */
export const twoPlantsEach: SheetPlan = {
  id: "two-plants-each",
  name: "Two plants each",
  widths: [80, 80, 80, 20, 330, 196],
  merged: ["A6:C8"],
  cells: {
    A1: heading("Pods"),
    B1: heading("No net"),
    C1: heading("Net"),
    A2: text("Plant 1"),
    B2: number(11),
    C2: number(34),
    A3: text("Plant 2"),
    B3: number(13),
    C3: number(38),
    A4: heading("Total"),
    B4: formula("=SUM(B2:B3)"),
    C4: formula("=SUM(C2:C3)"),
    A6: note("Runner beans with and without a net against pigeons, two plants each. Invented data for practice."),
    E1: heading("Question"),
    F1: heading("Answer"),
    E2: text("What did the headline claim?"),
    F2: text("300 % increase!"),
    E3: text("What do the two totals say?"),
    F3: answer("=FAIRBED.UPDOWN(B4,C4)", "0.0%"),
    E4: text("How to write it without a slip?"),
    F4: answer('=FAIRBED.UPDOWN(B4,C4,"short")'),
    E5: text("Can two plants each settle it?"),
    F5: answer("=FAIRBED.COMPARETWO(B1:B3,C1:C3)"),
    E6: text("How often would labels drawn by lot do as much?"),
    F6: answer('=FAIRBED.COMPARETWO(B1:B3,C1:C3,"Label-swap p")', "0.000"),
  },
};
