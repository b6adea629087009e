import type { Columns } from "../cells/showable";
import type { PickCurve } from "../nouns/findings/pickCurve";
import type { ShownOutputs } from "../nouns/shownOutputs";
import { pickCurve } from "../questions/pickCurve";
import { dayText } from "../words/dayText";
import type { WorksheetFunction } from "./worksheetFunction";

const SHARE = "Share in last 7 days";

/** PICKCURVE: the running harvest of each treatment, step by step. */
export const pickCurveFunction: WorksheetFunction<PickCurve> = {
  id: "PICKCURVE",
  parameters: [
    { name: "treatments", optional: false },
    { name: "dates", optional: false },
    { name: "amounts", optional: false },
    { name: "show", optional: true },
    { name: "plants_each", optional: true },
    { name: "days", optional: true },
  ],
  choices: {},
  ask: pickCurve,
  shown: (found) => ({
    answer: null,
    lines: [],
    columns: () => columns(found),
    own: [],
    tables: { [SHARE.toLowerCase()]: () => shares(found) },
  }),
};

/** A date stands for no single value where there are several treatments. */
function columns(found: PickCurve): Columns {
  const { treatments, steps, yearsKnown } = found;
  return {
    header: ["Date", ...treatments.map(({ name }) => name)],
    rows: steps.map((step, at) => [dayText(step, yearsKnown), ...treatments.map(({ running }) => running[at] ?? "")]),
    main: treatments.length === 1 ? 1 : null,
    last: labelled(SHARE, shares(found)),
  };
}

/** One row: the share of each treatment. */
function shares({ treatments }: PickCurve): ShownOutputs {
  return {
    outputs: [treatments.map(({ lastWeek }) => lastWeek ?? "no harvest")],
    formats: [treatments.map(() => "percent")],
  };
}

function labelled(label: string, { outputs, formats }: ShownOutputs): ShownOutputs {
  return { outputs: outputs.map((row) => [label, ...row]), formats: formats.map((row) => ["text", ...row]) };
}
