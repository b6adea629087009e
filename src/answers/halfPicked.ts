import type { Columns } from "../cells/showable";
import type { HalfPicked } from "../nouns/findings/halfPicked";
import { halfPicked } from "../questions/halfPicked";
import type { WorksheetFunction } from "./worksheetFunction";

const HEADER = ["Plant", "Day"];

/** HALFPICKED: by which day half of each plant's own harvest was in. */
export const halfPickedFunction: WorksheetFunction<HalfPicked> = {
  id: "HALFPICKED",
  parameters: [
    { name: "plants", optional: false },
    { name: "dates", optional: false },
    { name: "amounts", optional: false },
    { name: "show", optional: true },
    { name: "start", optional: true },
  ],
  choices: {},
  ask: halfPicked,
  shown: (found) => ({
    answer: null,
    lines: [],
    columns: () => columns(found),
    own: [],
  }),
};

function columns({ plants }: HalfPicked): Columns {
  return { header: HEADER, rows: plants.map(({ plant, day }) => [plant, day]), main: HEADER.indexOf("Day") };
}
