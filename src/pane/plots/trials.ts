import type { ManyTrials, Trial } from "../../nouns/findings/manyTrials";
import { isKnown, type Known } from "../../nouns/known";
import { changeRangeText } from "../../words/changeRange";
import { counted } from "../../words/counted";
import { moreOrLess } from "../../words/moreOrLess";
import { signedPercent } from "../../words/percent";
import { placeText } from "../../words/place";
import { sentenceStart } from "../../words/sentenceStart";
import { shortLabel } from "../../words/shortLabel";
import { axis } from "./axis";
import { line } from "./line";
import type { Mark, Picture, Spot } from "./picture";
import { plantKey } from "./plants";
import { type RangeEnds, rangeBar, type Span, shownSpan } from "./rangeBar";
import { type Scale, scale } from "./scale";

const width = 326;
const edge = 8;
/** Names stand left of here, changes right of it. */
const left = 112;
const step = 22;
/** More rows would make the picture longer than a pane is high. */
const mostRows = 24;

/** Every trial's change as a dot on a row of its own, and below them the common change with its range, in percent. */
export function trialsPicture(found: ManyTrials): Picture {
  const shown = found.trials.slice(0, mostRows);
  const ends = endsOf(found);
  const [low, high] = shownSpan([0, ...found.trials.map(({ change }) => 100 * change)], ends ?? []);
  const place = scale([low, high], [left, width - edge]);
  const common = shown.length * step;
  const bottom = common + step + 8;
  return {
    width,
    height: bottom + 18,
    title: `The change in each ${found.rowIs}`,
    caption: captionOf(found, shown.length),
    marks: [
      ...bandMarks(found, { span: [low, high], place, bottom }),
      ...axis({ low, high, at: bottom, place, unit: "%" }),
      ...shown.map((trial, at) => nameMark(nameOf(trial, at, found), at * step + 15, "name")),
      nameMark("Together", common + 15, "name new"),
      ...(ends === null ? [] : rangeBar({ ends, span: [low, high], at: common + 11, place })),
      line("average new", [place(100 * found.change), common + 3], [place(100 * found.change), common + 19]),
    ],
    spots: shown.map((trial, at) =>
      spotOf(trial, nameOf(trial, at, found), [place(100 * trial.change), at * step + 11]),
    ),
    facts: [
      ...found.trials.map((trial, at) => `${nameOf(trial, at, found)}: ${signedPercent(trial.change)}.`),
      commonFact(found),
    ],
  };
}

/** The range in percent points; null where there is none. */
function endsOf({ changeRange: { low, high } }: ManyTrials): RangeEnds | null {
  const end = (limit: Known) => (isKnown(limit) ? 100 * limit : null);
  return isKnown(low) || isKnown(high) ? [end(low), end(high)] : null;
}

/** The usual as a dashed line at no change, and around it the changes too small to matter. */
function bandMarks(
  { worthwhile }: ManyTrials,
  { span, place, bottom }: { readonly span: Span; readonly place: Scale; readonly bottom: number },
): readonly Mark[] {
  const inside = (change: number) => place(Math.min(Math.max(100 * change, span[0]), span[1]));
  return [
    { mark: "box", look: "band", from: [inside(-worthwhile.size), 2], to: [inside(worthwhile.size), bottom] },
    line("base", [place(0), 2], [place(0), bottom]),
  ];
}

function nameMark(text: string, down: number, look: string): Mark {
  return { mark: "text", look, at: [edge, down], text, anchor: "start" };
}

/** As the names have it, short enough to stand left of the dots. */
function nameOf({ name }: Trial, at: number, { rowIs }: ManyTrials): string {
  const label = sentenceStart(shortLabel(name ?? ""));
  if (label === "") return `${sentenceStart(rowIs)} ${at + 1}`;
  return label.length > longestName ? `${label.slice(0, longestName - 1)}…` : label;
}

const longestName = 16;

function spotOf({ place, change }: Trial, name: string, at: Spot["at"]): Spot {
  return {
    at,
    radius: 4,
    look: "new",
    key: plantKey(place),
    label: `${name}, ${placeText(place)}: ${signedPercent(change)}`,
  };
}

function captionOf({ trials, rowIs, changeRange }: ManyTrials, shown: number): string {
  const bar = isKnown(changeRange.low) ? " Bar: range of the common change." : "";
  const rest = shown === trials.length ? "" : ` Not drawn: ${counted(trials.length - shown, `more ${rowIs}`)}.`;
  return `Each dot is a ${rowIs}.${bar} Dashed: the usual. Shaded: too small to matter.${rest}`;
}

function commonFact({ change, changeRange }: ManyTrials): string {
  const range = changeRangeText(changeRange);
  const common = `Common change: ${moreOrLess(change) ?? "as much"}`;
  return range === null ? `${common}.` : `${common}, ${range}.`;
}
