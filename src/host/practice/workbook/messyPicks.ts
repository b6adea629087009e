import { answer, formula, heading, note, text } from "./cells";
import { logCells } from "./logCells";
import { messyLog } from "./messyLog";
import type { SheetPlan } from "./sheetData";

const log = "C1:C332,A1:A332,F1:F332";

/** A season's pick log as it is often kept, with twenty slips in it, and what comes of it all the same. */
export const messyPicks: SheetPlan = {
  id: "messy-picks",
  name: "Pick log, messy",
  widths: [86, 38, 92, 116, 46, 86, 150, 12, 330, 120, 60, 70, 60, 90, 90, 150, 130, 330],
  merged: ["I10:I12"],
  cells: {
    ...logCells(messyLog),
    I1: heading("Question"),
    J1: heading("Answer"),
    I2: text("What does the log come to?"),
    J2: answer(`=FAIRBED.TALLYPICKS(${log},"words",D1:D332,B1:B332)`),
    I3: text("What should I look out for?"),
    J3: answer(`=FAIRBED.TALLYPICKS(${log},"cautions",D1:D332,B1:B332)`),
    I4: text("How many rows belong to no plant?"),
    J4: answer(`=FAIRBED.TALLYPICKS(${log},"left out")`, "0"),
    I5: text("Grams of plant B5-2?"),
    J5: answer(`=FAIRBED.TALLYPICKS(${log},"B5-2")`, "0"),
    I6: text("What does a plain sum make of bare soil?"),
    J6: answer('=SUMIF(D1:D332,"Bare soil",F1:F332)', "0"),
    I7: text("And in the clean log?"),
    J7: answer("=SUMIF('Pick log, clean'!D1:D325,\"Bare soil\",'Pick log, clean'!F1:F325)", "0"),
    I8: text("What in it needs a look first?"),
    J8: answer('=FAIRBED.LOOKOVER(A1:G332,"words")'),
    I10: note(
      "Marlpit Corner, every pick of 2023, with twenty slips to find. The same log without them is the next sheet. " +
        "Invented data for practice.",
    ),
    I14: heading("One row per plant, with what was read and what needs a look"),
    I15: formula(`=FAIRBED.TALLYPICKS(${log},,D1:D332,B1:B332)`),
  },
};
