import { percentText, signedPercent } from "../../words/percent";
import type { Mark, Picture, Point } from "./picture";
import { scale, ticks } from "./scale";

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
/** Changes above are drawn at the top: nobody plans for more. */
const ceiling = 2;

/** The more plants, the smaller the change that shows: this plan's place on that curve. */
export function planPicture({ points, mine, hoped }: PlanSizes): Picture | null {
  const seen = points.filter(({ change }) => change !== null);
  if (seen.length < 2) return null;
  const sizes = points.map(({ plantsEach }) => plantsEach);
  const across = scale([Math.min(...sizes), Math.max(...sizes)], [left + 6, right]);
  const most = Math.min(Math.max(hoped, ...seen.map(({ change }) => change ?? 0)), ceiling);
  const up = scale([0, most * 1.05], [bottom, top]);
  const at = ({ plantsEach, change }: PlanPoint): Point => [across(plantsEach), up(Math.min(change ?? most, most))];
  return {
    width,
    height,
    title: "Smallest change that shows, by number of plants",
    caption: `Dashed: the ${signedPercent(hoped)} you hope for. It shows where the curve runs below it.`,
    marks: [
      ...sideAxis(most, up),
      ...bottomAxis(sizes, across),
      {
        mark: "line",
        look: "base",
        points: [
          [left, up(Math.min(hoped, most))],
          [right, up(Math.min(hoped, most))],
        ],
      },
      { mark: "line", look: "curve", points: seen.map(at) },
      ...mineMarks(mine, at(mine)),
    ],
    spots: [],
    facts: seen.map(({ plantsEach, change }) => `${plantsEach} plants each: ${signedPercent(change ?? 0)}.`),
  };
}

function sideAxis(most: number, up: (value: number) => number): readonly Mark[] {
  return ticks(0, most, 4).flatMap((value): readonly Mark[] => [
    {
      mark: "line",
      look: "grid",
      points: [
        [left, up(value)],
        [right, up(value)],
      ],
    },
    { mark: "text", look: "tick", at: [left - 4, up(value) + 4], text: percentText(value), anchor: "end" },
  ]);
}

function bottomAxis(sizes: readonly number[], across: (value: number) => number): readonly Mark[] {
  const [low, high] = [Math.min(...sizes), Math.max(...sizes)];
  const figures = ticks(low, high, 5).filter(Number.isInteger);
  return [
    {
      mark: "line",
      look: "axis",
      points: [
        [left, bottom],
        [right, bottom],
      ],
    },
    ...figures.map(
      (n): Mark => ({ mark: "text", look: "tick", at: [across(n), bottom + 13], text: `${n}`, anchor: "middle" }),
    ),
    { mark: "text", look: "tick", at: [right, bottom + 26], text: "plants each", anchor: "end" },
  ];
}

function mineMarks({ plantsEach, change }: PlanPoint, [x, y]: Point): readonly Mark[] {
  if (change === null)
    return [
      {
        mark: "line",
        look: "base",
        points: [
          [x, top],
          [x, bottom],
        ],
      },
    ];
  const text = `your plan: ${plantsEach} each, ${signedPercent(change)}`;
  return [
    { mark: "dot", look: "mine", at: [x, y], radius: 5 },
    { mark: "dot", look: "mine", at: [keyAt, top + 4], radius: 5 },
    { mark: "text", look: "value", at: [keyAt + 9, top + 8], text, anchor: "start" },
  ];
}
