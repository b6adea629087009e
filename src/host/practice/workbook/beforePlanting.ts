import { answer, heading, note, number, text } from "./cells";
import type { SheetPlan } from "./sheetData";

/** Room for a plan: four numbers to change, and what they mean for the number of plants. */
export const beforePlanting: SheetPlan = {
  id: "before-planting",
  name: "Before planting",
  widths: [330, 130, 20, 300],
  merged: ["D2:D5"],
  cells: {
    A1: heading("What I have in mind"),
    A2: text("Change hoped for"),
    B2: number(0.3, "0%"),
    A3: text("Unevenness of plants treated alike"),
    B3: number(0.25, "0%"),
    A4: text("Plants each"),
    B4: number(6),
    A5: text("Treatments, the usual one among them"),
    B5: number(2),
    D2: note("Type your own numbers into B2 to B5: the answers below follow. Invented data for practice."),
    A7: heading("Question"),
    B7: heading("Answer"),
    A8: text("How many plants to set out per treatment?"),
    B8: answer("=FAIRBED.PLANTSNEEDED(B2,B3,,B5)", "0"),
    A9: text("What is the smallest change they can show?"),
    B9: answer("=FAIRBED.SMALLESTCHANGE(B4,B3,,B5)", "0.0%"),
    A10: text("How likely is it that the change shows?"),
    B10: answer("=FAIRBED.CHANCETOSEE(B2,B4,B3,,B5)", "0.0%"),
  },
};
