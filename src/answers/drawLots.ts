import type { Columns, MissingNumber } from "../cells/showable";
import type { DrawnLots } from "../nouns/findings/drawnLots";
import { drawLots } from "../questions/drawLots";
import { pickANumber } from "../words/drawLots";
import type { WorksheetFunction } from "./worksheetFunction";

const HEADER = ["Spot", "Bed", "Treatment", "Label"];

/** DRAWLOTS: which plant gets which treatment, drawn by lot. */
export const drawLotsFunction: WorksheetFunction<DrawnLots> = {
  id: "DRAWLOTS",
  parameters: [
    { name: "treatments", optional: false },
    { name: "plants_each", optional: false },
    { name: "draw_number", optional: true },
    { name: "show", optional: true },
    { name: "beds", optional: true },
  ],
  choices: { beds: ["one each"] },
  ask: drawLots,
  shown: (found) => ({
    answer: found.drawNumber === null ? () => pickANumber : null,
    lines: [],
    columns: () => columns(found),
    own: [],
    missing: missingNumber(found),
  }),
};

/** A spot has no name of its own to be asked for: numbers repeat from bed to bed. */
function columns({ spots }: DrawnLots): Columns {
  const rows = spots.map(({ spot, bed, treatment, label }) => [spot, bed ?? "", treatment, label]);
  return { header: HEADER, rows, main: null };
}

/** Without a number there is no list; only the answer says in plain text what to do. */
function missingNumber({ drawNumber }: DrawnLots): MissingNumber | null {
  return drawNumber === null ? { shows: ["table", ...HEADER], problem: { problem: "no-draw-number" } } : null;
}
