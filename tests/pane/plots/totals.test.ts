// @vitest-environment jsdom
import { expect, it } from "vitest";
import { totalsPicture } from "../../../src/pane/plots/totals";
import { podsTotals } from "./seasons";
import { svgText } from "./svgText";

it("both totals per plant, and what they may mean, as approved", async () => {
  await expect(svgText(totalsPicture(podsTotals))).toMatchFileSnapshot("approved/totals-only.txt");
});

it("a missing total has no picture, a total of nothing has an empty bar", () => {
  const missing = { ...podsTotals.tried, perPlant: { absent: "total-only" } as const };
  expect(totalsPicture({ ...podsTotals, tried: missing })).toBeNull();
  const none = { low: { absent: "usual-not-above-zero" }, high: { absent: "usual-not-above-zero" } } as const;
  const nothing = totalsPicture({ ...podsTotals, usual: { ...podsTotals.usual, perPlant: 0 }, changeRange: none });
  expect(nothing?.caption).toBe("Each bar is a total shared out among its plants.");
});
