import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { at, cell } from "./call";

interface Rest {
  readonly row: string;
  readonly p: number;
}

/** The p value of a comparison with its direction; 1 where there is none. */
function surprise(usual: readonly number[], tried: readonly number[], how: string) {
  const [p, difference] = ["p value", "Difference"].map((label) => cell("COMPARETWO", usual, tried, label, how));
  return { p: typeof p === "number" ? p : 1, up: Number(difference) > 0 };
}

/** Every plant (or pair) without which a difference found is no longer found, by asking again without it. */
function deciding(usual: readonly number[], tried: readonly number[], how: string): readonly Rest[] {
  const whole = surprise(usual, tried, how);
  if (whole.p >= 0.05) return [];
  const without = (values: readonly number[], row: number) => values.filter((_, other) => other !== row);
  const rests: Rest[] = [];
  const look = (name: string, [before, after]: readonly [readonly number[], readonly number[]]) => {
    if (Math.min(before.length, after.length) < 2) return;
    const { p, up } = surprise(before, after, how);
    rests.push({ row: name, p: up === whole.up ? p : 1 });
  };
  for (const row of tried.keys()) {
    look(`row ${row + 1} of new`, [how === "pairs" ? without(usual, row) : usual, without(tried, row)]);
  }
  if (how !== "pairs") for (const row of usual.keys()) look(`row ${row + 1} of usual`, [without(usual, row), tried]);
  return rests.filter(({ p }) => p >= 0.05);
}

const values = fc.array(fc.integer({ min: 80, max: 130 }), { minLength: 5, maxLength: 5 });

it.each(["separate", "pairs"])("the plant that decides most, found by leaving out each in turn: %s", (how) => {
  const seen = { no: 0, plant: 0 };
  fc.assert(
    fc.property(values, values, (usual, gains) => {
      const tried = gains.map((gain, row) => (how === "pairs" ? (usual[row] ?? 0) + gain - 84 : gain + 22));
      const rests = deciding(usual, tried, how);
      const shown = String(cell("COMPARETWO", usual, tried, "One plant decides", how));
      const most = Math.max(...rests.map(({ p }) => p));
      if (rests.length === 0) expect(shown).toBe("no");
      else expect(rests.filter(({ p }) => p >= most - 1e-12).map(({ row }) => row)).toContain(shown);
      seen[shown === "no" ? "no" : "plant"] += 1;
    }),
    { numRuns: 80, seed: 11 },
  );
  expect(Math.min(seen.no, seen.plant)).toBeGreaterThan(5);
});

describe("where it stands", () => {
  const usual = [13.2, 14, 12, 15, 13.5, 14.5];
  const tried = [14.9, 15.6, 14.2, 14.4, 15.2, 15.9];
  const [decides] = deciding(usual, tried, "separate").toSorted((one, other) => other.p - one.p);

  it("is a row within its range, a cell where the address is known", () => {
    expect(decides?.row).toBe("row 1 of usual");
    expect(cell("COMPARETWO", usual, tried, "One plant decides")).toBe("row 1 of usual");
    const placed = [at("Trial!B2:B7", usual), at("Trial!C2:C7", tried)];
    expect(cell("COMPARETWO", ...placed, "One plant decides")).toBe("B2");
    const resting = [at("Trial!B2:B7", [19, 18, 14, 18, 23, 16]), at("Trial!C2:C5", [27, 19, 31, 29])];
    const named = cell("COMPARETWO", ...resting, "One plant decides");
    expect(cell("COMPARETWO", ...resting, "cautions")).toContain(`This rests on one plant, in cell ${named}.`);
  });

  it("counts a heading's row", () => {
    const named = [at("Trial!B1:B7", ["Bare", ...usual]), at("Trial!C1:C7", ["Straw", ...tried])];
    expect(cell("COMPARETWO", ...named, "One plant decides")).toBe("B2");
    expect(cell("COMPARETWO", ["Bare", ...usual], ["Straw", ...tried], "One plant decides")).toBe("row 2 of usual");
  });
});

it("'no' where the odd plant hides the difference, and where a removal would leave one plant", () => {
  const [usual, tried] = [
    [12, 15, 14, 13, 16, 1],
    [14, 15.5, 14.5, 15, 16, 30],
  ];
  expect(cell("COMPARETWO", usual, tried)).toMatch(/^Not settled/);
  expect(cell("COMPARETWO", usual, tried, "One plant decides")).toBe("no");
  expect(cell("COMPARETWO", [10, 10.1], [20, 20.1], "p value")).toBeLessThan(0.05);
  expect(cell("COMPARETWO", [10, 10.1], [20, 20.1], "One plant decides")).toBe("no");
});

it("asks before the caps for few plants", () => {
  expect(cell("COMPARETWO", [10, 11, 12], [14, 15, 19])).toBe("Not settled, may be up");
  const leaning = [
    [10, 11, 10.5],
    [14, 15, 18],
  ];
  expect(cell("COMPARETWO", ...leaning)).toMatch(/^(Leaning up|Not settled)/);
  expect(deciding(leaning[0] ?? [], leaning[1] ?? [], "separate").length > 0).toBe(
    cell("COMPARETWO", ...leaning, "One plant decides") !== "no",
  );
});
