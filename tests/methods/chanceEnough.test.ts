import { describe, expect, it } from "vitest";
import { chanceEnough } from "../../src/methods/chanceEnough";
import { power } from "../../src/methods/power";
import { near } from "../near";
import reference from "../reference/power.json";
import { figure } from "./found";
import { numbers, planOf, unevennessFor } from "./planRows";
import { printed } from "./printed";

describe("chanceEnough agrees with R's non-central pt()", () => {
  it("all layouts, gains and falls", () => {
    for (const row of reference.cases.enough) {
      const [change = 0, c, n = 0, worthwhile = 0, k, b, known = 0] = numbers(row);
      const found = figure(chanceEnough({ change, worthwhile }, n, planOf(c, k, b)));
      // R's pt() adds up to 1e-12 of noise, which shows in small chances
      near(`${row}`, found, known, { relative: 1e-9, absolute: 2e-12 });
    }
  });
});

describe("a worthwhile change of 0 gives what R prints as power when it leaves out the far tail (strict = FALSE)", () => {
  const chance = (delta: number, n: number) =>
    figure(chanceEnough({ change: 1, worthwhile: 0 }, n, planOf(unevennessFor(delta), 2, 0)));

  it("20 each, a gap of one standard deviation (R's help page of power.t.test)", () => {
    printed("power", chance(1, 20), "0.8689528");
  });

  it("100 each, a gap of 1 with deviation 2.5 (worked example)", () => {
    printed("power", chance(1 / 2.5, 100), "0.8036466");
  });
});

it("a worthwhile change of 0 gives the power but for its far tail", () => {
  const plan = planOf(0.3, 2, 0);
  for (const change of [0.5, -0.4]) {
    const enough = figure(chanceEnough({ change, worthwhile: 0 }, 8, plan));
    const seen = figure(power(change, 8, plan));
    expect(enough).toBeLessThan(seen);
    near("chance", enough, seen, { absolute: 1e-5 });
  }
  near("no change", figure(chanceEnough({ change: 0, worthwhile: 0 }, 8, plan)), 0.025, { relative: 1e-12 });
});

it("says when no degree of freedom is left", () => {
  const none = { absent: "no-degrees-of-freedom" };
  expect(chanceEnough({ change: 0.5, worthwhile: 0.1 }, 2, planOf(0.3, 2, 4))).toEqual(none);
});

// R: pt(qt(.975, 14), 14, -.1/(.3*sqrt((1 + 1.1^2)/8)), lower.tail = FALSE)
it("no change at all is held against the worthwhile gain, and rarely looks like it", () => {
  const found = figure(chanceEnough({ change: 0, worthwhile: 0.1 }, 8, planOf(0.3, 2, 0)));
  near("chance", found, 0.0053392536455496575, { relative: 1e-9 });
});
