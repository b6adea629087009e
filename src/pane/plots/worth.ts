import type { WorthIt } from "../../nouns/findings/worthIt";
import { isKnown } from "../../nouns/known";
import { moneyText } from "../../words/money";
import { axis } from "./axis";
import { line } from "./line";
import type { Mark, Picture, Point } from "./picture";
import { rangeBar, type Span } from "./rangeBar";
import { type Scale, scale } from "./scale";

const width = 326;
const edge = 8;
const step = 40;
const bottom = 3 * step + 4;

/** What the extra harvest is worth, what it costs, and what is left with its range: money per plant, from zero. */
export function worthPicture({ worth, extraCost, left, leftRange: { low, high } }: WorthIt): Picture {
  const ends = isKnown(low) && isKnown(high) ? ([low, high] as const) : null;
  const amounts = [0, worth, extraCost, left, ...(ends ?? [])];
  const span: Span = [Math.min(...amounts), Math.max(...amounts)];
  const place = scale(span, [edge, width - edge]);
  const rows = [
    { name: worth < 0 ? "The lost harvest was worth" : "The extra harvest is worth", money: worth, look: "new" },
    { name: extraCost < 0 ? "Saved" : "Extra cost", money: extraCost, look: "usual" },
  ] as const;
  return {
    width,
    height: bottom + 18,
    title: "Money per plant",
    caption: `${ends === null ? "" : "Bar: range of what is left. "}Dashed: nothing left.`,
    marks: [
      ...axis({ low: span[0], high: span[1], at: bottom, place, unit: null }),
      ...rows.flatMap(({ name, money, look }, at) => [
        ...rowTexts(name, money, { top: at * step, look }),
        bar(money, [place, at * step + 19], look),
      ]),
      line("base", [place(0), 4], [place(0), bottom]),
      ...rowTexts(left < 0 ? "Lost" : "Left", left, { top: 2 * step, look: "new" }),
      ...leftMarks(left, ends, { span, place }),
    ],
    spots: [],
    facts: [
      ...rows.map(({ name, money }) => `${name}: ${moneyText(Math.abs(money))}.`),
      `${left < 0 ? "Lost" : "Left"}: ${moneyText(Math.abs(left))}.`,
      ...(ends === null ? [] : [`Range of what is left: ${moneyText(ends[0])} to ${moneyText(ends[1])}.`]),
    ],
  };
}

function rowTexts(
  name: string,
  money: number,
  { top, look }: { readonly top: number; readonly look: string },
): readonly Mark[] {
  return [
    { mark: "text", look: `name halo ${look}`, at: [edge, top + 14], text: name, anchor: "start" },
    { mark: "text", look: "value halo", at: [width - edge, top + 14], text: moneyText(Math.abs(money)), anchor: "end" },
  ];
}

function bar(money: number, [place, top]: readonly [Scale, number], look: string): Mark {
  const [from, to] = [place(Math.min(0, money)), place(Math.max(0, money))];
  return { mark: "box", look: `bar ${look}`, from: [from, top], to: [to, top + 14] };
}

function leftMarks(
  left: number,
  ends: readonly [number, number] | null,
  { span, place }: { readonly span: Span; readonly place: Scale },
): readonly Mark[] {
  const at = 2 * step + 26;
  const [from, to]: readonly [Point, Point] = [
    [place(left), at - 8],
    [place(left), at + 8],
  ];
  return [...(ends === null ? [] : rangeBar({ ends, span, at, place })), line("average new", from, to)];
}
