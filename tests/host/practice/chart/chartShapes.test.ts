import { describe, expect, it } from "vitest";
import type { BookChart } from "../../../../src/files/book";
import { chartShapes, type Shape } from "../../../../src/host/practice/chart/chartShapes";

const box = { left: 46, top: 256, width: 592, height: 216 };
/** Letters of 8 pixels each. */
const widthOf = (text: string) => 8 * [...text].length;
const mulches: BookChart = {
  title: "Average per plant (g)",
  pattern: "0",
  bars: [
    { name: "Bare soil", figure: 3018.4, usual: true },
    { name: "Straw", figure: 4392.2, usual: false },
    { name: "Woodchip", figure: 3071.1, usual: false },
  ],
};

const shapes = (chart: BookChart) => chartShapes(chart, box, widthOf);
const bars = (chart: BookChart) => shapes(chart).flatMap((shape) => (shape.shape === "bar" ? [shape.box] : []));
const texts = (chart: BookChart) => shapes(chart).flatMap((shape) => (shape.shape === "text" ? [shape.text] : []));

it("the approved picture of three mulches", async () => {
  await expect(svgOf(shapes(mulches))).toMatchFileSnapshot("approved/threeMulches.svg");
});

it("bars start together, and their lengths compare as the figures do", () => {
  const [bare, straw, chips] = bars(mulches);
  expect(new Set([bare?.left, straw?.left, chips?.left]).size).toBe(1);
  expect((straw?.width ?? 0) / (bare?.width ?? 1)).toBeCloseTo(4392.2 / 3018.4, 9);
});

describe("stays within its box", () => {
  const crowd = (count: number, name: string): BookChart => ({
    ...mulches,
    bars: Array.from({ length: count }, (_, at) => ({ name: `${name} ${at}`, figure: at * 1000, usual: at === 0 })),
  });

  it.each([
    ["twenty treatments", crowd(20, "Mulch")],
    [
      "a name longer than the picture",
      crowd(2, "A very long name of a very special mulch, twice as long as any other"),
    ],
    ["figures of zero", { ...mulches, bars: mulches.bars.map((bar) => ({ ...bar, figure: 0 })) }],
  ])("%s", (_, chart) => {
    for (const shape of shapes(chart)) {
      const [left, right] =
        shape.shape === "text"
          ? [shape.left, shape.left + widthOf(shape.text)]
          : [shape.box.left, shape.box.left + shape.box.width];
      expect(left).toBeGreaterThanOrEqual(box.left);
      expect(right).toBeLessThanOrEqual(box.left + box.width);
    }
  });
});

it("figures below zero lie on the other side of the line", () => {
  const [up, down] = bars({
    title: "Change",
    pattern: "0%",
    bars: [
      { name: "2022", figure: 0.3, usual: false },
      { name: "2023", figure: -0.1, usual: false },
    ],
  });
  expect((down?.left ?? 0) + (down?.width ?? 0)).toBeCloseTo(up?.left ?? 0, 9);
  expect((up?.width ?? 0) / (down?.width ?? 1)).toBeCloseTo(3, 9);
});

it.each([
  ["0", "3018"],
  ["0.0", "3018.4"],
  ["0.00", "3018.40"],
  ["0%", "301840%"],
] as const)("writes figures as %s: %s", (pattern, text) => {
  expect(texts({ ...mulches, pattern })).toContain(text);
});

it.each([
  ["0%", -0.004, "0%"],
  ["0%", 0.145, "15%"],
  ["0", -0.2, "0"],
  ["0", -0.5, "-1"],
  ["General", 4350.6, "4350.6"],
] as const)("rounds as a cell does: %s of %s is %s", (pattern, figure, text) => {
  expect(texts({ title: "Change", pattern, bars: [{ name: "Straw", figure, usual: false }] })).toContain(text);
});

/** The shapes as a picture that any browser shows. */
function svgOf(all: readonly Shape[]): string {
  const { left, top, width, height } = box;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${left} ${top} ${width} ${height}" font-family="sans-serif" font-size="13">`,
    `<title>${mulches.title}</title>`,
    ...all.map(markOf),
    "</svg>\n",
  ].join("\n");
}

function markOf(shape: Shape): string {
  if (shape.shape === "text") {
    const weight = shape.bold ? ' font-weight="600"' : "";
    return `<text x="${round(shape.left)}" y="${round(shape.middle)}" dominant-baseline="middle"${weight}>${shape.text}</text>`;
  }
  const colour = shape.shape === "line" ? "#1f241d" : shape.usual ? "#7a5c12" : "#2d6a2e";
  const { left, top, width, height } = shape.box;
  return `<rect x="${round(left)}" y="${round(top)}" width="${round(width)}" height="${round(height)}" fill="${colour}"/>`;
}

function round(place: number): number {
  return Math.round(place * 10) / 10;
}
