import { expect, it } from "vitest";
import { cell } from "./call";

const usual = [20, 21, 19, 20.5, 19.5, 20];
const worthwhiles = [0.01, 0.05, 0.1, 0.2, 0.4, 0.8];

/** METHODS 6.1, written down a second time. */
function verdictOf(low: number, high: number, worthwhile: number): string {
  if (low >= worthwhile) return "Up, enough to matter";
  if (low > 0 && high < worthwhile) return "Up, too small to matter";
  if (low > 0) return "Up, how far unclear";
  if (high <= -worthwhile) return "Down, enough to matter";
  if (high < 0 && low > -worthwhile) return "Down, too small to matter";
  if (high < 0) return "Down, how far unclear";
  if (low > -worthwhile && high < worthwhile) return "Near level";
  if (low > -worthwhile) return "Not settled, may be up";
  return high < worthwhile ? "Not settled, may be down" : "Not settled";
}

function trial(ratio: number, spread: number): readonly number[] {
  return [-1, 1.2, -0.6, 0.9, -0.5, 0].map((step) => 20 * ratio * (1 + step * spread));
}

it("each of the ten verdicts, by its range and its worthwhile change", () => {
  const seen = new Set<unknown>();
  for (const ratio of [0.3, 0.8, 0.94, 0.99, 1, 1.01, 1.06, 1.25, 2]) {
    for (const spread of [0.01, 0.05, 0.25]) {
      const tried = trial(ratio, spread);
      const low = Number(cell("COMPARETWO", usual, tried, "Change low"));
      const high = Number(cell("COMPARETWO", usual, tried, "Change high"));
      for (const worthwhile of worthwhiles) {
        const verdict = cell("COMPARETWO", usual, tried, null, null, worthwhile);
        expect(verdict, `${low} to ${high}, worthwhile ${worthwhile}`).toBe(verdictOf(low, high, worthwhile));
        seen.add(verdict);
      }
    }
  }
  expect(seen.size).toBe(10);
});

it("a missing limit counts as endless", () => {
  const far = [
    [1, 0.1, 0.2, 3],
    [4, 9, 7, 8],
  ];
  expect(cell("COMPARETWO", ...far, "Change high")).toBe("no upper limit");
  expect(cell("COMPARETWO", ...far, "Change low")).toBeGreaterThan(0.05);
  expect(cell("COMPARETWO", ...far)).toBe("Up, enough to matter");
});

it("worthwhile is 10 % when left out, and a negative one leaves verdict and figures as they are", () => {
  const tried = trial(1.2, 0.1);
  expect(cell("COMPARETWO", usual, tried)).toBe(cell("COMPARETWO", usual, tried, null, null, 0.1));
  for (const worthwhile of worthwhiles) {
    const [more, less] = [worthwhile, -worthwhile].map((size) => cell("COMPARETWO", usual, tried, null, null, size));
    expect(less).toBe(more);
  }
  const words = (size: number) => cell("COMPARETWO", usual, [21, 24, 19, 23, 20, 22.5], "say", null, size);
  expect(words(-0.1)).not.toBe(words(0.1));
});

it.each(["30%", "30 %", 0.3, "0.3", "0,3"])("a worthwhile typed as %s is 30 %%", (worthwhile) => {
  const tried = trial(1.25, 0.01);
  expect(cell("COMPARETWO", usual, tried, null, null, 0.1)).toBe("Up, enough to matter");
  expect(cell("COMPARETWO", usual, tried, null, null, worthwhile)).toBe("Up, too small to matter");
});

it("confidence moves the range and with it the verdict, never the p value", () => {
  const tried = [21, 24, 19, 23, 20, 22.5];
  expect(cell("COMPARETWO", usual, tried)).toBe("Not settled, may be up");
  expect(cell("COMPARETWO", usual, tried, null, null, 0.05, 0.8)).toBe("Up, how far unclear");
  const p = cell("COMPARETWO", usual, tried, "p value");
  expect(cell("COMPARETWO", usual, tried, "p value", null, null, 0.8)).toBe(p);
});

it("0 % lies outside the range exactly when p is below 1 − confidence", () => {
  for (const tried of [trial(1.05, 0.08), trial(1.09, 0.08), trial(0.93, 0.05), trial(0.97, 0.02)]) {
    for (const how of ["separate", "equal unevenness", "pairs"]) {
      for (const confidence of [0.5, 0.8, 0.9, 0.95, 0.99]) {
        const shown = (label: string) => Number(cell("COMPARETWO", usual, tried, label, how, null, confidence));
        const outside = shown("Change low") > 0 || shown("Change high") < 0;
        expect(outside, `${how} ${confidence}`).toBe(shown("p value") < 1 - confidence);
      }
    }
  }
});
