import type { TreatmentUnevenness, Unevenness } from "../../nouns/findings/unevenness";
import { isKnown } from "../../nouns/known";
import { amountText } from "../../words/amount";
import { percentText } from "../../words/percent";
import { axis } from "./axis";
import type { Mark, Picture } from "./picture";
import { type Scale, scale } from "./scale";

const width = 326;
const edge = 8;
const step = 34;
/** More rows than this do not fit a pane. */
const most = 8;

/** For every treatment a line from its lowest to its highest plant, with its average and one standard deviation each way. */
export function unevenPicture({ treatments, unit }: Unevenness): Picture | null {
  const rows = treatments.filter(({ lowest, highest }) => isKnown(lowest) && isKnown(highest)).slice(0, most);
  const ends = rows.flatMap(({ lowest, highest }) => [lowest, highest]).filter(isKnown);
  if (ends.length === 0) return null;
  const [low, high] = [Math.min(0, ...ends), Math.max(...ends)];
  const place = scale([low, high], [edge, width - edge]);
  const bottom = rows.length * step + 4;
  return {
    width,
    height: bottom + 18,
    title: "How much plants treated alike differ",
    caption: "Line: lowest to highest plant. Block: average, give or take one standard deviation.",
    marks: [
      ...axis({ low, high, at: bottom, place, unit }),
      ...rows.flatMap((row, index) => rowMarks(row, index * step, place)),
    ],
    spots: [],
    facts: rows.map((row) => factOf(row, unit)),
  };
}

function nameOf({ name, unevenness }: TreatmentUnevenness): string {
  const share = isKnown(unevenness) ? `differ by ${percentText(unevenness)}` : "";
  return [name ?? "These plants", share].filter((part) => part !== "").join(": ");
}

function rowMarks(row: TreatmentUnevenness, top: number, place: Scale): readonly Mark[] {
  const { mean, deviation, lowest, highest } = row;
  const at = top + 23;
  const marks: Mark[] = [{ mark: "text", look: "name new", at: [edge, top + 12], text: nameOf(row), anchor: "start" }];
  if (isKnown(lowest) && isKnown(highest)) {
    marks.push({
      mark: "line",
      look: "reach",
      points: [
        [place(lowest), at],
        [place(highest), at],
      ],
    });
  }
  if (!isKnown(mean)) return marks;
  if (isKnown(deviation)) {
    marks.push({
      mark: "box",
      look: "spread",
      from: [place(mean - deviation), at - 5],
      to: [place(mean + deviation), at + 5],
    });
  }
  return [
    ...marks,
    {
      mark: "line",
      look: "average new",
      points: [
        [place(mean), at - 7],
        [place(mean), at + 7],
      ],
    },
  ];
}

function factOf(row: TreatmentUnevenness, unit: string | null): string {
  const { lowest, highest, mean } = row;
  const text = (figure: typeof mean) => (isKnown(figure) ? amountText(figure, unit) : "not known");
  return `${nameOf(row)}; average ${text(mean)}, lowest ${text(lowest)}, highest ${text(highest)}.`;
}
