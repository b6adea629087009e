import { percentText, signedPercent } from "../../words/percent";
import { line } from "./line";
import type { Mark, Picture, Point } from "./picture";
import { type Scale, scale, ticks } from "./scale";

/** What a plan of one size shows: the smallest change seen, null where none is. */
export interface PlanPoint {
  readonly plantsEach: number;
  readonly change: number | null;
}

/** Plans of several sizes, the grower's own and the change hoped for. */
export interface PlanSizes {
  readonly points: readonly PlanPoint[];
  readonly mine: PlanPoint;
  readonly hoped: number;
}

const width = 326;
const height = 136;
const left = 50;
const right = width - 10;
const top = 10;
/** Where the name of the grower's own plan stands: the curve never gets up there. */
const keyAt = width * 0.45;
const bottom = height - 28;
/** Bigger changes are drawn at the top: nobody plans for more. */
const ceiling = 2;

/**
 * The more plants, the smaller the change that shows: this plan's place on that curve. Losses are drawn by their size.
 *
 * @returns null where fewer than two plans show any change
 */
export function planPicture({ points, mine, hoped }: PlanSizes): Picture | null {
  const seen = points.filter(({ change }) => change !== null);
  if (seen.length < 2) return null;
  const sizes = points.map(({ plantsEach }) => plantsEach);
  const across = scale([Math.min(...sizes), Math.max(...sizes)], [left + 6, right]);
  const wished = Math.abs(hoped);
  const most = Math.min(Math.max(wished, ...seen.map(({ change }) => Math.abs(change ?? 0))), ceiling);
  const up = scale([0, most * 1.05], [bottom, top]);
  const at = ({ plantsEach, change }: PlanPoint): Point => [
    across(plantsEach),
    up(Math.min(Math.abs(change ?? most), most)),
  ];
  return {
    width,
    height,
    title: "Smallest change that shows, by number of plants",
    caption: `Dashed: the ${signedPercent(hoped)} you hope for. It shows where the curve runs below it.`,
    marks: [
      ...sideAxis(most, Math.sign(hoped), up),
      ...bottomAxis(sizes, across),
      line("base", [left, up(Math.min(wished, most))], [right, up(Math.min(wished, most))]),
      { mark: "line", look: "curve", points: seen.map(at) },
      ...mineMarks(mine, at(mine)),
    ],
    spots: [],
    facts: seen.map(({ plantsEach, change }) => `${plantsEach} plants each: ${signedPercent(change ?? 0)}.`),
  };
}

/** @param sign −1 where the changes are losses */
function sideAxis(most: number, sign: number, up: Scale): readonly Mark[] {
  return ticks(0, most, 4).flatMap((size): readonly Mark[] => [
    line("grid", [left, up(size)], [right, up(size)]),
    { mark: "text", look: "tick", at: [left - 4, up(size) + 4], text: percentText(sign * size), anchor: "end" },
  ]);
}

function bottomAxis(sizes: readonly number[], across: Scale): readonly Mark[] {
  const [low, high] = [Math.min(...sizes), Math.max(...sizes)];
  const figures = ticks(low, high, 5).filter(Number.isInteger);
  return [
    line("axis", [left, bottom], [right, bottom]),
    ...figures.map(
      (n): Mark => ({ mark: "text", look: "tick", at: [across(n), bottom + 13], text: `${n}`, anchor: "middle" }),
    ),
    { mark: "text", look: "tick", at: [right, bottom + 26], text: "plants each", anchor: "end" },
  ];
}

function mineMarks({ plantsEach, change }: PlanPoint, [x, y]: Point): readonly Mark[] {
  if (change === null) return [line("base", [x, top], [x, bottom])];
  const text = `your plan: ${plantsEach} each, ${signedPercent(change)}`;
  return [
    { mark: "dot", look: "mine", at: [x, y], radius: 5 },
    { mark: "dot", look: "mine", at: [keyAt, top + 4], radius: 5 },
    { mark: "text", look: "value", at: [keyAt + 9, top + 8], text, anchor: "start" },
  ];
}
