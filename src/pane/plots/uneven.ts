import type { TreatmentUnevenness, Unevenness } from "../../nouns/findings/unevenness";
import { isKnown } from "../../nouns/known";
import { amountText } from "../../words/amount";
import { counted } from "../../words/counted";
import { percentText } from "../../words/percent";
import { axis } from "./axis";
import { line } from "./line";
import type { Mark, Picture } from "./picture";
import { type Scale, scale } from "./scale";

const width = 326;
const edge = 8;
const step = 34;
/** More rows than this do not fit a pane. */
const most = 8;

/**
 * For every treatment a line from its lowest to its highest plant, with its average and one standard deviation each
 * way.
 */
export function unevenPicture({ treatments, unit }: Unevenness): Picture | null {
  const known = treatments.filter(({ lowest, highest }) => isKnown(lowest) && isKnown(highest));
  const rows = known.slice(0, most);
  const ends = rows.flatMap(({ lowest, highest, ...row }) => [lowest, highest, ...blockEnds(row)]).filter(isKnown);
  if (ends.length === 0) return null;
  const [low, high] = [Math.min(0, ...ends), Math.max(...ends)];
  const place = scale([low, high], [edge, width - edge]);
  const bottom = rows.length * step + 4;
  return {
    width,
    height: bottom + 18,
    title: "How much plants treated alike differ",
    caption: `Line: lowest to highest plant. Block: average, give or take one standard deviation.${untold(known.length - rows.length)}`,
    marks: [
      ...axis({ low, high, at: bottom, place, unit }),
      ...rows.flatMap((row, index) => rowMarks(row, index * step, place)),
    ],
    spots: [],
    facts: rows.map((row) => factOf(row, unit)),
  };
}

/** One standard deviation on either side of the average: of a few plants it may reach beyond the highest. */
function blockEnds({ mean, deviation }: Pick<TreatmentUnevenness, "mean" | "deviation">): readonly number[] {
  return isKnown(mean) && isKnown(deviation) ? [mean - deviation, mean + deviation] : [];
}

function untold(treatments: number): string {
  return treatments === 0 ? "" : ` Not drawn: ${counted(treatments, "more treatment")}.`;
}

function nameOf({ name, unevenness }: TreatmentUnevenness): string {
  const share = isKnown(unevenness) ? `differ by ${percentText(unevenness)}` : "";
  return [name ?? "These plants", share].filter((part) => part !== "").join(": ");
}

function rowMarks(row: TreatmentUnevenness, top: number, place: Scale): readonly Mark[] {
  const { mean, lowest, highest } = row;
  const at = top + 23;
  const marks: Mark[] = [{ mark: "text", look: "name new", at: [edge, top + 12], text: nameOf(row), anchor: "start" }];
  if (isKnown(lowest) && isKnown(highest)) marks.push(line("reach", [place(lowest), at], [place(highest), at]));
  const [from, to] = blockEnds(row).map(place);
  if (from !== undefined && to !== undefined) {
    marks.push({ mark: "box", look: "spread", from: [from, at - 5], to: [to, at + 5] });
  }
  if (isKnown(mean)) marks.push(line("average new", [place(mean), at - 7], [place(mean), at + 7]));
  return marks;
}

function factOf(row: TreatmentUnevenness, unit: string | null): string {
  const { lowest, highest, mean } = row;
  const text = (figure: typeof mean) => (isKnown(figure) ? amountText(figure, unit) : "not known");
  return `${nameOf(row)}; average ${text(mean)}, lowest ${text(lowest)}, highest ${text(highest)}.`;
}
