import type { ManyTreatments } from "../../nouns/findings/manyTreatments";
import { mean } from "../../numerics/moments";
import { amountText } from "../../words/amount";
import { placeText } from "../../words/place";
import { sentenceStart } from "../../words/sentenceStart";
import { shortLabel } from "../../words/shortLabel";
import { axis } from "./axis";
import { extent } from "./extent";
import { line } from "./line";
import type { Mark, Picture, Point, Spot } from "./picture";
import { plantKey } from "./plants";
import { type Scale, scale } from "./scale";
import { type Standing, standings } from "./standing";

const width = 326;
const edge = 8;
const dot = 4;
const step = 44;

/** A treatment as a row of the picture. */
interface Row extends Standing {
  readonly title: string;
  readonly at: number;
}

/** One bed across the rows: the average of its plants of each treatment, and how far it lies from the other beds. */
interface BedLine {
  readonly bed: string;
  readonly points: readonly Point[];
  readonly gain: number;
}

/** Every plant a dot, those of one bed joined: where the lines run side by side, beds differ and treatments do too. */
export function bedsPicture(found: ManyTreatments): Picture | null {
  const placed = standings(found);
  if (found.beds === null || placed.length < 2) return null;
  const rows = placed.map((standing, index) => ({
    ...standing,
    title: sentenceStart(shortLabel(standing.treatment.name)),
    at: 24 + index * step,
  }));
  const values = rows.flatMap(({ treatment }) => treatment.plants.map(({ value }) => value));
  const [low, high] = extent(values);
  const place = scale([low, high], [edge, width - edge]);
  const bottom = rows.length * step + 18;
  const lines = found.beds.map((bed) => bedLine(bed, rows, place));
  return {
    width,
    height: bottom + 18,
    title: "The plants of each bed, joined",
    caption: "Each line joins the plants of one bed. Comparing within beds leaves out what a whole line lies off.",
    marks: [
      ...axis({ low, high, at: bottom, place, unit: found.unit }),
      ...bedMarks(lines, bottom - 4),
      ...rows.map(({ title, treatment, at }): Mark => {
        const look = `name halo ${treatment.isUsual ? "usual" : "new"}`;
        return { mark: "text", look, at: [edge, at - 10], text: title, anchor: "start" };
      }),
    ],
    spots: rows.flatMap((row) => spotsOf(row, found.unit, place)),
    facts: found.beds.map((bed) => factOf(bed, rows, found.unit)),
  };
}

function bedLine(bed: string, rows: readonly Row[], place: Scale): BedLine {
  const standing = rows.flatMap(({ treatment, height, at }) => {
    const values = treatment.plants.filter((plant) => plant.bed === bed).map(({ value }) => value);
    return values.length === 0 ? [] : [{ value: mean(values), height, at }];
  });
  return {
    bed,
    points: standing.map(({ value, at }) => [place(value), at]),
    gain: standing.length < 2 ? Number.NaN : mean(standing.map(({ value, height }) => value - height)),
  };
}

/**
 * A line for each bed; the highest and the lowest stand out and are named, so that a grower sees how far beds differ.
 */
function bedMarks(lines: readonly BedLine[], namesAt: number): readonly Mark[] {
  const ordered = lines.filter(({ gain }) => !Number.isNaN(gain)).sort((one, other) => one.gain - other.gain);
  const named = ordered.length < 3 ? [] : [ordered[0], ordered.at(-1)].filter((one) => one !== undefined);
  const plain = lines.filter((one) => !named.includes(one) && one.points.length > 1);
  return [
    ...plain.map(({ points }): Mark => ({ mark: "line", look: "bed", points })),
    ...named.flatMap((one, at) => namedBed(one, { at: namesAt, anchor: at === 0 ? "end" : "start" })),
  ];
}

function namedBed(
  { bed, points }: BedLine,
  { at, anchor }: { readonly at: number; readonly anchor: "start" | "end" },
): readonly Mark[] {
  const [x, y] = points.at(-1) ?? [edge, at];
  const room = x < 50 ? "start" : x > width - 50 ? "end" : anchor;
  return [
    { mark: "line", look: "bed named", points },
    line("bed named", [x, y], [x, at - 11]),
    { mark: "text", look: "value halo", at: [x, at], text: bedName(bed), anchor: room },
  ];
}

function bedName(bed: string): string {
  return /^(bed|block)/i.test(bed) ? sentenceStart(shortLabel(bed)) : `Bed ${shortLabel(bed)}`;
}

function spotsOf({ treatment, title, at }: Row, unit: string | null, place: Scale): readonly Spot[] {
  return treatment.plants.map(({ value, place: where, bed }) => ({
    at: [place(value), at],
    radius: dot,
    look: treatment.isUsual ? "usual" : "new",
    key: plantKey(where),
    label: `${title}, ${bedName(bed ?? "").toLowerCase()}, ${placeText(where)}: ${amountText(value, unit)}`,
  }));
}

function factOf(bed: string, rows: readonly Row[], unit: string | null): string {
  const plants = rows.flatMap(({ title, treatment }) =>
    treatment.plants.filter((plant) => plant.bed === bed).map(({ value }) => `${title} ${amountText(value, unit)}`),
  );
  return `${bedName(bed)}: ${plants.length === 0 ? "no plants" : plants.join(", ")}.`;
}
