import type { TwoTreatments } from "../../nouns/findings/twoTreatments";
import { mean } from "../../numerics/moments";
import { randomSource } from "../../numerics/random";
import { shuffle } from "../../numerics/shuffle";
import { amountText } from "../../words/amount";
import { axis } from "./axis";
import { extent } from "./extent";
import { line } from "./line";
import type { Mark, Picture } from "./picture";
import { scale } from "./scale";

const count = 100;
/** The start of the draw: the same swaps each time the picture is opened. */
const seed = 100;
const width = 326;
const edge = 8;
const ground = 92;
const dot = 3;

/**
 * A hundred trials in which the treatment changes nothing: the plants keep their amounts, their labels are swapped
 * at random (within each pair, where there are pairs). Every swap is a dot at its gap; the real gap is marked. Null
 * where a treatment has no plants.
 */
export function swapsPicture({ usual, tried, pairs, unit }: TwoTreatments): Picture | null {
  const [labelled, other] = [tried.plants.map(({ value }) => value), usual.plants.map(({ value }) => value)];
  if (labelled.length === 0 || other.length === 0) return null;
  const real = mean(labelled) - mean(other);
  const swap = pairs === null ? labelSwaps(labelled, other) : pairSwaps(labelled, other);
  const gaps = Array.from({ length: count }, swap);
  const slack = 1e-9 * extent([...labelled, ...other].map(Math.abs))[1];
  const asBig = gaps.filter((gap) => Math.abs(gap) >= Math.abs(real) - slack).length;
  const reach = Math.max(Math.abs(real), ...gaps.map(Math.abs)) * 1.05 || 1;
  const place = scale([-reach, reach], [edge, width - edge]);
  return {
    width,
    height: 116,
    title: "A hundred label swaps",
    caption: `Each dot is one swap. In ${asBig} of these ${count}, the gap is at least as big as the real one, either way.`,
    marks: [
      ...axis({ low: -reach, high: reach, at: ground + 4, place, unit }),
      ...stacked(
        gaps.map(place),
        gaps.map((gap) => (Math.abs(gap) >= Math.abs(real) - slack ? "swap far" : "swap")),
      ),
      ...realMarks(place(real), `The real gap: ${amountText(real, unit)}`),
    ],
    spots: [],
    facts: [
      `The real gap is ${amountText(real, unit)}.`,
      `Gaps of the swaps go from ${amountText(Math.min(...gaps), unit)} to ${amountText(Math.max(...gaps), unit)}.`,
    ],
  };
}

function realMarks(x: number, text: string): readonly Mark[] {
  const anchor = x < width / 3 ? "start" : x > (width * 2) / 3 ? "end" : "middle";
  return [line("real", [x, 16], [x, ground + 4]), { mark: "text", look: "value", at: [x, 11], text, anchor }];
}

/** Dots that would share a place, one on top of the other; higher piles are pressed together. */
function stacked(places: readonly number[], looks: readonly string[]): readonly Mark[] {
  const columns = places.map((x) => Math.round(x / (2 * dot)));
  const highest = Math.max(...columns.map((column) => columns.filter((other) => other === column).length));
  const step = Math.min(2 * dot, (ground - 20) / highest);
  const heights = new Map<number, number>();
  return columns.map((column, index) => {
    const below = heights.get(column) ?? 0;
    heights.set(column, below + 1);
    return {
      mark: "dot",
      look: looks[index] ?? "swap",
      at: [column * 2 * dot, ground - below * step],
      radius: dot - 0.4,
    };
  });
}

function labelSwaps(labelled: readonly number[], other: readonly number[]): () => number {
  const source = randomSource(seed);
  return () => {
    const mixed = shuffle([...labelled, ...other], source);
    return mean(mixed.slice(0, labelled.length)) - mean(mixed.slice(labelled.length));
  };
}

function pairSwaps(labelled: readonly number[], other: readonly number[]): () => number {
  const source = randomSource(seed);
  const differences = labelled.map((value, index) => value - (other[index] ?? value));
  return () => mean(differences.map((difference) => (source.below(2) === 0 ? difference : -difference)));
}
