import { answer, heading, note, text } from "./cells";
import type { SheetPlan } from "./sheetData";

/** Empty room for a grower's own numbers, with formulas that answer as soon as numbers stand there. */
export const tryYourOwn: SheetPlan = {
  id: "try-your-own",
  name: "Try your own",
  widths: [110, 110, 20, 300, 300],
  merged: ["D2:E3", "D5:E6"],
  cells: {
    A1: heading("The usual"),
    B1: heading("New"),
    D1: heading("Your own numbers"),
    D2: note(
      "One plant a row: the plants grown as usual in column A, the others in column B. For a plant that was lost, " +
        "type lost. Write your own two names over the headings.",
    ),
    D5: note(
      "From Excel: copy the two columns there, click A2 here and paste with Ctrl+V (on a Mac ⌘V). " +
        "Until you save a copy, your work is kept in this browser, on this computer alone.",
    ),
    D9: heading("Question"),
    E9: heading("Answer"),
    D10: text("Is the difference more than luck?"),
    E10: answer("=FAIRBED.COMPARETWO(A1:A101,B1:B101)"),
    D11: text("What can I say?"),
    E11: answer('=FAIRBED.COMPARETWO(A1:A101,B1:B101,"say")'),
  },
};
