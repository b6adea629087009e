import type { PickCurve, TreatmentCurve } from "../../nouns/findings/pickCurve";
import { amountText } from "../../words/amount";
import { counted } from "../../words/counted";
import { dayText } from "../../words/dayText";
import { sentenceStart } from "../../words/sentenceStart";
import { shorterLabel } from "../../words/shortLabel";
import { apart } from "./apart";
import { line } from "./line";
import type { Mark, Picture, Point } from "./picture";
import { type Scale, scale, ticks } from "./scale";

const width = 326;
const height = 190;
const left = 44;
/** Where the curves end and their names begin. */
const right = 208;
const top = 18;
const bottom = height - 28;
const lineHeight = 14;
/** More curves than this cannot be told apart. */
const most = 6;

/** Where days and amounts lie. */
interface Scales {
  readonly across: Scale;
  readonly up: Scale;
}

/** The running harvest of each treatment as a curve, its name at its end; null where nothing was picked. */
export function curvesPicture(found: PickCurve): Picture | null {
  const curves = found.treatments.slice(0, most);
  const highest = curves.reduce((high, { running }) => Math.max(high, running.at(-1) ?? 0), 0);
  const [first, last] = [found.steps[0] ?? 0, found.steps.at(-1) ?? 0];
  if (highest === 0 || first === last) return null;
  const scales = { across: scale([0, last - first], [left, right]), up: scale([0, highest], [bottom, top]) };
  const per = found.perPlant ? "per plant set out" : "in all";
  return {
    width,
    height,
    title: `Running harvest by treatment, ${per}`,
    caption: `${sentenceStart(per)}${found.unit === null ? "" : `, in ${found.unit}`}; days from ${dayText(first, found.yearsKnown)}.`,
    marks: [
      ...sideAxis(highest, scales.up),
      ...bottomAxis(last - first, scales.across),
      ...curves.map((curve, at): Mark => {
        return { mark: "line", look: `curve kind${at + 1}`, points: pointsOf(curve, found.steps, scales) };
      }),
      ...nameMarks(curves, scales.up),
    ],
    spots: [],
    facts: [...found.treatments.map((curve) => fact(curve, found)), ...untold(found.treatments.length)],
  };
}

function pointsOf({ running }: TreatmentCurve, steps: readonly number[], { across, up }: Scales): readonly Point[] {
  const first = steps[0] ?? 0;
  return running.map((amount, at): Point => [across((steps[at] ?? first) - first), up(amount)]);
}

function sideAxis(highest: number, up: Scale): readonly Mark[] {
  return ticks(0, highest, 4).flatMap((value): readonly Mark[] => [
    line("grid", [left, up(value)], [right, up(value)]),
    { mark: "text", look: "tick", at: [left - 4, up(value) + 4], text: amountText(value), anchor: "end" },
  ]);
}

function bottomAxis(days: number, across: Scale): readonly Mark[] {
  const figures = ticks(0, days, 5).filter(Number.isInteger);
  return [
    line("axis", [left, bottom], [right, bottom]),
    ...figures.map(
      (day): Mark => ({ mark: "text", look: "tick", at: [across(day), bottom + 13], text: `${day}`, anchor: "middle" }),
    ),
    { mark: "text", look: "tick", at: [right + 10, bottom + 13], text: "days", anchor: "start" },
  ];
}

/** Each name beside the end of its curve, no two over each other, with a piece of the curve before it. */
function nameMarks(curves: readonly TreatmentCurve[], up: Scale): readonly Mark[] {
  const ends = curves.map(({ running }) => up(running.at(-1) ?? 0));
  const levels = apart(ends, lineHeight, bottom - 4);
  return curves.flatMap(({ name }, at): readonly Mark[] => {
    const [end, level] = [ends[at] ?? bottom, levels[at] ?? bottom];
    const label = sentenceStart(shorterLabel(name, 3));
    const short = label.length > 15 ? `${label.slice(0, 14).trimEnd()}…` : label;
    return [
      {
        mark: "line",
        look: `curve kind${at + 1}`,
        points: [
          [right, end],
          [right + 5, level],
          [right + 15, level],
        ],
      },
      { mark: "text", look: "value", at: [right + 18, level + 4], text: short, anchor: "start" },
    ];
  });
}

function fact({ name, running, setOut, halfBy }: TreatmentCurve, { unit }: PickCurve): string {
  const per = setOut === null ? " in all" : " per plant set out";
  const half = halfBy === null ? "" : `, half of it by day ${halfBy}`;
  return `${sentenceStart(name)}: ${amountText(running.at(-1) ?? 0, unit)}${per}${half}.`;
}

function untold(treatments: number): readonly string[] {
  return treatments > most ? [`${counted(treatments - most, "treatment")} not drawn.`] : [];
}
