import { describe, expect, it } from "vitest";
import { near } from "../near";
import doors from "../reference/doors.json";
import handbook from "../reference/handbook.json";
import { cell, number } from "./call";

const facts = handbook.cases;

const CHANGE = 0.3;

/** The unevenness at which that change is so many standard deviations of a single plant (METHODS 5.2). */
function unevennessFor(standardDeviations: number): number {
  return (CHANGE * Math.SQRT2) / Math.sqrt(1 + (1 + CHANGE) ** 2) / standardDeviations;
}

describe("figures that others published, put into our terms", () => {
  it("power of 20 each at one standard deviation (36)", () => {
    const { inputs, expect: published } = facts.powerBasic;
    // power.t.test leaves out the far tail, here 2.3e-7 and 9.0e-7
    near("n 20", number("CHANCETOSEE", CHANGE, 20, unevennessFor(1)), inputs.n20_delta1, { absolute: 3e-7 });
    near("n 100", number("CHANCETOSEE", CHANGE, 100, unevennessFor(0.4)), inputs["n100_delta1_sd2.5"], {
      absolute: 1e-6,
    });
    const needed = cell("PLANTSNEEDED", CHANGE, unevennessFor(1), "Needed after losses", null, null, 0.9);
    expect(needed).toBe(Math.ceil(published.n_for_90));
  });

  it("Cohen's small, middle and large effect at 80 % (37)", () => {
    const { inputs, expect: needed } = facts.cohenN;
    for (const [at, d] of inputs.d.entries()) {
      const plants = cell("PLANTSNEEDED", CHANGE, unevennessFor(d), "Needed after losses");
      expect(plants).toBe(Math.ceil(needed[at] ?? 0));
    }
  });

  it("CV 5 % shows 10 % with five or six (41); barley (39); pairs (44)", () => {
    near("five", number("CHANCETOSEE", CHANGE, 5, unevennessFor(2)), facts.cvTen.expect["5"], {
      absolute: facts.cvTen.tolerance,
    });
    near("six", number("CHANCETOSEE", CHANGE, 6, unevennessFor(2)), facts.cvTen.expect["6"], {
      absolute: facts.cvTen.tolerance,
    });
    const barley = cell("PLANTSNEEDED", CHANGE, unevennessFor(10 / Math.sqrt(50)), "Needed after losses");
    expect(barley).toBe(facts.barley.expect);
    const pairs = cell("PLANTSNEEDED", CHANGE, unevennessFor(1) / Math.SQRT2, "Needed after losses", 2, "one each");
    expect(pairs).toBe(facts.pairsNeeded.expect);
  });

  it("chances and plants of METHODS 10, 42", () => {
    const { inputs, expect: chances, tolerance } = facts.enginePower;
    for (const [at, [change, plants, unevenness]] of inputs.p_n_cv.entries()) {
      near("chance", number("CHANCETOSEE", change, plants, unevenness), chances[at] ?? 0, { absolute: tolerance / 10 });
    }
    for (const [at, [change = 0, unevenness = 0]] of facts.engineN.inputs.change_cv.entries()) {
      const needed = cell("PLANTSNEEDED", change / 100, unevenness / 100, "Needed after losses");
      expect(needed).toBe(facts.engineN.expect[at]);
    }
  });

  it("the whole table of plants (METHODS 5.5)", () => {
    const { changes, rows } = facts.plantsTable;
    for (const [unevenness, row] of Object.entries(rows)) {
      const needed = changes.map((change) => cell("PLANTSNEEDED", change, Number(unevenness), "Needed after losses"));
      expect(needed, unevenness).toEqual(row);
    }
  });

  it("smallest changes and beds of METHODS 5.5", () => {
    for (const [unevenness, plants, points] of facts.smallestTable.rows) {
      expect(Math.round(100 * number("SMALLESTCHANGE", plants, unevenness))).toBe(points);
    }
    for (const [unevenness, beds] of facts.bedsNeeded.rows) {
      expect(cell("PLANTSNEEDED", 0.3, unevenness, "Needed after losses", 2, "one each")).toBe(beds);
    }
  });
});

describe("chances and changes by R, with treatments and beds", () => {
  it.each(doors.cases.chances)("change $change, $plants plants, $treatments treatments, $beds beds", (plan) => {
    const { change, plants, unevenness, treatments, beds, worthwhile, see, enough } = plan;
    const call = [change, plants, unevenness];
    const rest = [treatments, beds === 1 ? null : beds, worthwhile];
    near("see", number("CHANCETOSEE", ...call, null, ...rest), see, { relative: 1e-9 });
    near("see", number("CHANCETOSEE", ...call, "Chance to see it", ...rest), see, { relative: 1e-9 });
    const matter = number("CHANCETOSEE", ...call, "chance it is enough to matter", ...rest);
    near("enough", matter, enough, { relative: 1e-9, absolute: 1e-13 });
    if (beds !== plants) return;
    near("one each", number("CHANCETOSEE", ...call, null, treatments, "One each"), see, { relative: 1e-9 });
  });

  it.each(doors.cases.smallest)("$plants plants, $treatments treatments, $beds beds, direction $direction", (plan) => {
    const { plants, unevenness, chance, treatments, beds, direction, change } = plan;
    const way = direction > 0 ? "more" : "less";
    const shown = number("SMALLESTCHANGE", plants, unevenness, null, treatments, beds === 1 ? null : beds, chance, way);
    near("change", shown, change, { relative: 1e-8 });
  });
});
