import type { Group, TwoTreatments } from "../../nouns/findings/twoTreatments";
import { isKnown, type Known } from "../../nouns/known";
import type { Place } from "../../nouns/place";
import { amountText } from "../../words/amount";
import { counted } from "../../words/counted";
import { namesOf } from "../../words/names";
import { placeText } from "../../words/place";
import { sentenceStart } from "../../words/sentenceStart";
import { axis } from "./axis";
import { dodge } from "./dodge";
import { line } from "./line";
import type { Mark, Picture, Spot } from "./picture";
import { type RangeEnds, rangeBar, type Span, shownSpan } from "./rangeBar";
import { type Scale, scale } from "./scale";

const width = 326;
const edge = 8;
const dot = 4;
const rangeAt = 89;
const axisAt = 98;

/** One treatment as a row of dots. */
interface Row extends Group {
  readonly title: string;
  readonly at: number;
}

/** The key by which a plant's dot is found again. */
export function plantKey({ argument, row, column }: Pick<Place, "argument" | "row" | "column">): string {
  return `${argument}:${row}:${column ?? 1}`;
}

/** Every plant a dot, a row for each treatment, with the averages and below them the range of the change. */
export function plantsPicture(found: TwoTreatments): Picture | null {
  const values = [...found.usual.plants, ...found.tried.plants].map(({ value }) => value);
  if (values.length === 0) return null;
  const { unit } = found;
  const names = namesOf(found.usual.name, found.tried.name);
  const rows: readonly Row[] = [
    { ...found.usual, title: sentenceStart(names.usual), at: 28 },
    { ...found.tried, title: sentenceStart(names.tried), at: 66 },
  ];
  const [low, high] = shownSpan(values, rangeEnds(found) ?? []);
  const place = scale([low, high], [edge, width - edge]);
  return {
    width,
    height: 114,
    title: `${sentenceStart(names.usual)} and ${names.tried}, plant by plant`,
    caption: captionOf(found),
    marks: [
      ...axis({ low, high, at: axisAt, place, unit }),
      ...rows.flatMap((row) => rowMarks(row, place)),
      ...rangeMarks(found, [low, high], place),
    ],
    spots: rows.flatMap((row) => spotsOf(row, unit, place)),
    facts: [...rows.map((row) => rowFact(row, unit)), ...rangeFact(found)],
  };
}

/** The range of the change as amounts of the new, set out from the usual average; null when there is no range. */
function rangeEnds({ usual, difference, differenceRange }: TwoTreatments): RangeEnds | null {
  const { mean } = usual;
  const { low, high } = differenceRange;
  if (!isKnown(mean) || !isKnown(difference) || !(isKnown(low) || isKnown(high))) return null;
  const end = (limit: Known) => (isKnown(limit) ? mean + limit : null);
  return [end(low), end(high)];
}

function rowMarks({ role, title, mean, at }: Row, place: Scale): readonly Mark[] {
  const name: Mark = { mark: "text", look: `name ${role}`, at: [edge, at - 16], text: title, anchor: "start" };
  if (!isKnown(mean)) return [name];
  const x = place(mean);
  const average = line(`average ${role}`, [x, at - 12], [x, at + 12]);
  return role === "new" ? [name, average] : [name, line("base", [x, at + 12], [x, axisAt]), average];
}

function rangeMarks(found: TwoTreatments, span: Span, place: Scale): readonly Mark[] {
  const ends = rangeEnds(found);
  if (ends === null || !isKnown(found.tried.mean)) return [];
  const middle: Mark = { mark: "dot", look: "middle", at: [place(found.tried.mean), rangeAt], radius: 3.5 };
  return [...rangeBar({ ends, span, at: rangeAt, place }), middle];
}

function spotsOf(row: Row, unit: string | null, place: Scale): readonly Spot[] {
  const places = row.plants.map(({ value }) => place(value));
  const lifts = dodge(places, 2 * dot, 9);
  return row.plants.map((plant, index) => ({
    at: [places[index] ?? edge, row.at + (lifts[index] ?? 0)],
    radius: dot,
    look: row.role,
    key: plantKey(plant.place),
    label: `${row.title}, ${placeText(plant.place)}: ${amountText(plant.value, unit)}`,
  }));
}

function captionOf(found: TwoTreatments): string {
  if (rangeEnds(found) === null) return "Each dot is a plant, each tall mark an average.";
  return "Bar: range of the change. Dashed: the usual average.";
}

function rowFact({ title, plants, mean }: Row, unit: string | null): string {
  const average = isKnown(mean) ? `, ${amountText(mean, unit)} on average` : "";
  return `${title}: ${counted(plants.length, "plant")}${average}.`;
}

function rangeFact({ differenceRange, unit }: TwoTreatments): readonly string[] {
  const { low, high } = differenceRange;
  if (!isKnown(low) || !isKnown(high)) return [];
  return [`Range of the difference: ${amountText(low, unit)} to ${amountText(high, unit)}.`];
}
