import type { HalfPicked, HalfPlant } from "../../nouns/findings/halfPicked";
import { isKnown } from "../../nouns/known";
import { counted } from "../../words/counted";
import { plainNumber } from "../../words/plainNumber";
import { shortLabel } from "../../words/shortLabel";
import { axis } from "./axis";
import { extent } from "./extent";
import { line } from "./line";
import type { Picture, Spot } from "./picture";
import { plantKey } from "./plants";
import { scale } from "./scale";

const width = 326;
const edge = 8;
const dot = 4;
/** A pile of dots is at most so high; beyond it dots cover each other. */
const highestPile = 14;

/** A plant with a day. */
type Dated = HalfPlant & { readonly day: number };

/** The half-harvest day of every plant as a dot, equal days piled up, with the average day; null without any. */
export function halvesPicture({ plants, mean }: HalfPicked): Picture | null {
  const dated = plants.filter(isDated);
  const days = dated.map(({ day }) => day);
  if (days.length === 0) return null;
  const [first, high] = extent(days);
  const low = Math.min(0, first);
  const piles = pileUp(days);
  const height = (extent(piles)[1] + 1) * 2 * dot + 44;
  const ground = height - 18;
  const place = scale([low, Math.max(high, low + 1)], [edge + dot, width - edge - dot]);
  return {
    width,
    height,
    title: "The day by which half of each plant's harvest was in",
    caption: "Each dot is a plant, the tall mark their average day.",
    marks: [
      ...axis({ low, high: Math.max(high, low + 1), at: ground, place, unit: "days" }),
      ...(isKnown(mean) ? [line("average usual", [place(mean), 4], [place(mean), ground])] : []),
    ],
    spots: dated.map((plant, at) => spotOf(plant, [place(plant.day), ground - dot - 3 - (piles[at] ?? 0) * 2 * dot])),
    facts: [...factsOf(days, mean), ...apartFrom(plants)],
  };
}

function isDated(plant: HalfPlant): plant is Dated {
  return typeof plant.day === "number";
}

/** How many dots lie below each on its day. */
function pileUp(days: readonly number[]): readonly number[] {
  const piles = new Map<number, number>();
  return days.map((day) => {
    const below = piles.get(day) ?? 0;
    piles.set(day, below + 1);
    return Math.min(below, highestPile);
  });
}

function spotOf({ plant, day, place }: Dated, at: Spot["at"]): Spot {
  return { at, radius: dot, look: "new", key: plantKey(place), label: `${shortLabel(plant)}: day ${plainNumber(day)}` };
}

function factsOf(days: readonly number[], mean: HalfPicked["mean"]): readonly string[] {
  const average = isKnown(mean) ? `, on average day ${plainNumber(mean, 1)}` : "";
  const [first, last] = extent(days);
  const span = `day ${plainNumber(first)} to day ${plainNumber(last)}`;
  return [`${counted(days.length, "plant")}: ${span}${average}.`];
}

function apartFrom(plants: readonly HalfPlant[]): readonly string[] {
  const without = plants.filter((plant) => !isDated(plant)).length;
  return without === 0 ? [] : [`${counted(without, "plant")} without such a day.`];
}
