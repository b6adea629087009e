// @vitest-environment jsdom
import { describe, expect, it } from "vitest";
import type { Picture } from "../../../src/pane/plots/picture";
import { treatmentsPicture } from "../../../src/pane/plots/treatments";
import { mulches, mulchesInPairs } from "../mulches";
import { svgText } from "./svgText";

/** Where a figure of the axis stands. */
function tickAt(picture: Picture | null, text: string): number {
  const tick = picture?.marks.find((mark) => mark.mark === "text" && mark.text === text);
  return tick?.mark === "text" ? tick.at[0] : Number.NaN;
}

describe("treatmentsPicture, as approved", () => {
  it("against the usual in beds: ranges, worthwhile band, no plants", async () => {
    await expect(svgText(treatmentsPicture(mulches()))).toMatchFileSnapshot("approved/treatmentsInBeds.txt");
  });

  it("all pairs of separate plants: plants, ranges against the highest, letters", async () => {
    await expect(svgText(treatmentsPicture(mulchesInPairs()))).toMatchFileSnapshot("approved/treatmentsInPairs.txt");
  });
});

it("shades the changes too small to matter, 10 % around the usual's 3000", () => {
  const picture = treatmentsPicture(mulches());
  const band = picture?.marks.find((mark) => mark.mark === "box");
  const perGram = (tickAt(picture, "4000") - tickAt(picture, "3000")) / 1000;
  expect(band?.mark === "box" && band.from[0]).toBeCloseTo(tickAt(picture, "3000") - 300 * perGram, 0);
  expect(band?.mark === "box" && band.to[0]).toBeCloseTo(tickAt(picture, "3000") + 300 * perGram, 0);
});

it("sets a percent range out from the usual average, so that bar and verdict agree", () => {
  const picture = treatmentsPicture(mulches());
  const [bar] = picture?.marks.filter((mark) => mark.look === "range") ?? [];
  const perGram = (tickAt(picture, "4000") - tickAt(picture, "3000")) / 1000;
  const [from, to] = bar?.mark === "line" ? bar.points : [];
  expect(from?.[0]).toBeCloseTo(tickAt(picture, "3000") + 0.12 * 3000 * perGram, 0);
  expect(to?.[0]).toBeCloseTo(tickAt(picture, "3000") + 0.9 * 3000 * perGram, 0);
});

it("no band, bar or letter where nothing could be tested", () => {
  const none = { absent: "too-few-plants" } as const;
  const untested = mulches({
    treatments: mulches().treatments.map((one) =>
      one.againstUsual === null
        ? one
        : {
            ...one,
            againstUsual: {
              ...one.againstUsual,
              changeRange: { low: none, high: none },
              differenceRange: { low: none, high: none },
            },
          },
    ),
  });
  expect(treatmentsPicture(untested)?.marks.filter(({ look }) => look === "range")).toEqual([]);
});

it("there is no picture of one treatment", () => {
  expect(treatmentsPicture(mulches({ treatments: mulches().treatments.slice(0, 1) }))).toBeNull();
});
