import { answer, formula, heading, note, text } from "./cells";
import { cleanLog } from "./cleanLog";
import { logCells } from "./logCells";
import type { SheetPlan } from "./sheetData";

const picks = "A1:A325,F1:F325";

/** The same pick log without its slips, and how the harvest came in. */
export const cleanPicks: SheetPlan = {
  id: "clean-picks",
  name: "Pick log, clean",
  widths: [86, 38, 56, 116, 42, 56, 42, 12, 300, 86, 86, 116, 86, 12, 86, 60],
  merged: ["I6:I8"],
  cells: {
    ...logCells(cleanLog),
    I1: heading("Question"),
    J1: heading("Answer"),
    I2: text("What does the log come to?"),
    J2: answer(`=FAIRBED.TALLYPICKS(C1:C325,${picks},"words",D1:D325,B1:B325)`),
    I3: text("Which mulch is early?"),
    J3: answer(`=FAIRBED.PICKCURVE(D1:D325,${picks},"words",8)`),
    I4: text("By which day is half of a plant's harvest in?"),
    J4: answer(`=FAIRBED.HALFPICKED(C1:C325,${picks},"words")`),
    I6: note("Marlpit Corner, every pick of 2023: one row per pick, one thing per cell. Invented data for practice."),
    I10: heading("Running harvest in g per plant set out"),
    I11: formula(`=FAIRBED.PICKCURVE(D1:D325,${picks},,8)`),
    O10: heading("Half the harvest in"),
    O11: formula(`=FAIRBED.HALFPICKED(C1:C325,${picks})`),
  },
};
