import type { ManyTreatments } from "../../nouns/findings/manyTreatments";
import { isKnown } from "../../nouns/known";
import { amountText } from "../../words/amount";
import { counted } from "../../words/counted";
import { moreOrLess } from "../../words/moreOrLess";
import { placeText } from "../../words/place";
import { sentenceStart } from "../../words/sentenceStart";
import { shortLabel } from "../../words/shortLabel";
import { treatmentRange } from "../../words/treatmentRange";
import { axis } from "./axis";
import { dodge } from "./dodge";
import { line } from "./line";
import type { Mark, Picture, Spot } from "./picture";
import { plantKey } from "./plants";
import { rangeBar, type Span, shownSpan } from "./rangeBar";
import { type Scale, scale } from "./scale";
import { type Standing, standings } from "./standing";

const width = 326;
const edge = 8;
const dot = 4;
/** Height of a row with its plants, and of one without: plants in beds have a picture of their own. */
const steps = { plants: 50, average: 36 };

/** A treatment as a row of the picture: the line of its average, and below it that of its range. */
interface Row extends Standing {
  readonly title: string;
  readonly top: number;
  readonly at: number;
  readonly rangeAt: number;
}

/** Every treatment a row: its average, and the range of where it stands against the usual (or the highest). */
export function treatmentsPicture(found: ManyTreatments): Picture | null {
  const placed = standings(found);
  if (placed.length < 2) return null;
  const rows = rowsOf(placed, found.beds === null);
  const [low, high] = shownSpan(
    placed.flatMap(({ treatment, height }) => [height, ...treatment.plants.map(({ value }) => value)]),
    placed.flatMap(({ ends }) => ends ?? []),
  );
  const place = scale([low, high], [edge, width - edge]);
  const bottom = rows.length * (found.beds === null ? steps.plants : steps.average) + 6;
  return {
    width,
    height: bottom + 18,
    title: found.usual === null ? "Averages of the treatments" : `The treatments against ${shortLabel(found.usual)}`,
    caption: captionOf(found, placed),
    marks: [
      ...bandMarks(found, rows, { span: [low, high], place, bottom }),
      ...axis({ low, high, at: bottom, place, unit: found.unit }),
      ...rows.flatMap((row) => rowMarks(row, [low, high], place)),
    ],
    spots: found.beds === null ? rows.flatMap((row) => spotsOf(row, found.unit, place)) : [],
    facts: rows.map((row) => factOf(row, found)),
  };
}

function rowsOf(placed: readonly Standing[], withPlants: boolean): readonly Row[] {
  return placed.map((standing, index) => {
    const top = index * (withPlants ? steps.plants : steps.average);
    const at = top + 26;
    const rangeAt = withPlants ? top + 42 : at;
    return { ...standing, title: sentenceStart(shortLabel(standing.treatment.name)), top, at, rangeAt };
  });
}

/** The base's average as a dashed line through all rows, and around the usual's the changes too small to matter. */
function bandMarks(
  { usual, worthwhile }: ManyTreatments,
  rows: readonly Row[],
  { span, place, bottom }: { readonly span: Span; readonly place: Scale; readonly bottom: number },
): readonly Mark[] {
  const base = rows.find(({ isBase }) => isBase);
  if (base === undefined) return [];
  const dashed = line("base", [place(base.height), 4], [place(base.height), bottom]);
  if (usual === null || base.height <= 0) return [dashed];
  const inside = (amount: number) => place(Math.min(Math.max(amount, span[0]), span[1]));
  const [from, to] = [-worthwhile.size, worthwhile.size].map((change) => inside(base.height * (1 + change)));
  return [{ mark: "box", look: "band", from: [from ?? edge, 4], to: [to ?? edge, bottom] }, dashed];
}

function rowMarks({ treatment, title, height, ends, ...row }: Row, span: Span, place: Scale): readonly Mark[] {
  const look = treatment.isUsual ? "usual" : "new";
  const average = line(`average ${look}`, [place(height), row.at - 8], [place(height), row.at + 8]);
  return [
    { mark: "text", look: `name halo ${look}`, at: [edge, row.top + 13], text: title, anchor: "start" },
    { mark: "text", look: "value halo", at: [width - edge, row.top + 13], text: besideOf(treatment), anchor: "end" },
    ...(ends === null ? [] : rangeBar({ ends, span, at: row.rangeAt, place })),
    average,
  ];
}

/** What stands at the end of a row: the change, and the letters where there are. */
function besideOf({ isUsual, againstUsual, letters }: Standing["treatment"]): string {
  const change = isUsual ? "the usual" : againstUsual === null ? "" : changeText(againstUsual.change);
  return [change, letters].filter((part) => part !== "").join("  ·  ");
}

function changeText(change: NonNullable<Standing["treatment"]["againstUsual"]>["change"]): string {
  return isKnown(change) ? (moreOrLess(change)?.replace(/ \(.*/, "") ?? "as much") : "";
}

function spotsOf({ treatment, title, at }: Row, unit: string | null, place: Scale): readonly Spot[] {
  const places = treatment.plants.map(({ value }) => place(value));
  const lifts = dodge(places, 2 * dot, 9);
  return treatment.plants.map((plant, index) => ({
    at: [places[index] ?? edge, at + (lifts[index] ?? 0)],
    radius: dot,
    look: treatment.isUsual ? "usual" : "new",
    key: plantKey(plant.place),
    label: `${title}, ${placeText(plant.place)}: ${amountText(plant.value, unit)}`,
  }));
}

function captionOf({ usual, beds }: ManyTreatments, placed: readonly Standing[]): string {
  const dots = beds === null ? "Each dot is a plant. " : "";
  if (placed.every(({ ends }) => ends === null)) return `${dots}Each tall mark is an average.`;
  if (usual === null) return `${dots}Bar: range of where it stands against the highest, which is dashed.`;
  return `${dots}Bar: range of the change. Dashed: the usual. Shaded: too small to matter.`;
}

function factOf({ treatment, title, height }: Row, { unit, usual }: ManyTreatments): string {
  const { plants, isUsual, againstUsual, letters } = treatment;
  const change = againstUsual === null ? "" : changeText(againstUsual.change);
  const parts = [
    counted(plants.length, "plant"),
    `${amountText(height, unit)} on average`,
    isUsual ? "the usual" : "",
    change === "" ? "" : `${change}${change === "as much" ? " as" : " than"} ${shortLabel(usual ?? "")}`,
    againstUsual === null ? "" : `range ${treatmentRange(againstUsual)}`,
    letters === "" ? "" : `letters ${letters}`,
  ];
  return `${title}: ${parts.filter((part) => part !== "").join(", ")}.`;
}
