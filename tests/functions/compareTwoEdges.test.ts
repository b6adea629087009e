import { describe, expect, it } from "vitest";
import { near } from "../near";
import { at, cell, matrix, number } from "./call";

const onePlant = "one plant: no unevenness";
const low = (plants: number) => Array.from({ length: plants }, (_, plant) => 10 + (plant % 3) / 10);
const high = (plants: number) => low(plants).map((value) => value + 10);
const tests = ["t", "df", "p value", "Difference low", "Difference high", "Change low", "Change high"];

describe("few plants (METHODS 4.3)", () => {
  it.each([
    [1, 1, "Too few plants"],
    [1, 9, "Too few plants"],
    [9, 1, "Too few plants"],
    [2, 2, "Too few plants"],
    [2, 8, "Leaning up, too few plants"],
    [3, 3, "Leaning up, too few plants"],
    [3, 9, "Leaning up, too few plants"],
    [9, 3, "Leaning up, too few plants"],
    [4, 4, "Up, enough to matter"],
  ])("%d usual and %d new: %s", (before, after, verdict) => {
    expect(cell("COMPARETWO", low(before), high(after))).toBe(verdict);
    const few = verdict !== "Up, enough to matter";
    expect(String(cell("COMPARETWO", low(before), high(after), "cautions")).startsWith("With")).toBe(few);
  });

  it.each([
    [3, "Too few plants"],
    [4, "Leaning up, too few plants"],
    [5, "Leaning up, too few plants"],
    [6, "Up, enough to matter"],
  ])("%d pairs: %s", (pairs, verdict) => {
    const after = high(pairs).map((value, pair) => value + pair / 10);
    expect(cell("COMPARETWO", low(pairs), after, null, "pairs")).toBe(verdict);
    expect(String(cell("COMPARETWO", low(pairs), after, "cautions", "pairs")).startsWith("With")).toBe(pairs < 6);
  });

  it("the cap has its mirror, and leaves other verdicts as they are", () => {
    expect(cell("COMPARETWO", high(3), low(3))).toBe("Leaning down, too few plants");
    expect(cell("COMPARETWO", [10, 20, 15], [11, 19, 16])).toBe("Not settled");
  });

  it.each([
    [[12], [18, 20, 22]],
    [[18, 20, 22], [12]],
    [[12], [18]],
  ])("one plant: averages and change stand, tests and ranges say why not", (usual, tried) => {
    for (const label of tests) expect(cell("COMPARETWO", usual, tried, label), label).toBe(onePlant);
    const alone = usual.length === 1 ? "Unevenness, usual" : "Unevenness, new";
    expect(cell("COMPARETWO", usual, tried, alone)).toBe(onePlant);
    const mean = (all: readonly number[]) => all.reduce((sum, value) => sum + value) / all.length;
    near("change", number("COMPARETWO", usual, tried, "Change"), mean(tried) / mean(usual) - 1);
    near("difference", number("COMPARETWO", usual, tried, "Difference"), mean(tried) - mean(usual));
  });
});

describe("nothing varies", () => {
  it("within any group: no answer, but the label swap stands", () => {
    const call = [Array(4).fill(5), Array(4).fill(7)];
    expect(cell("COMPARETWO", ...call)).toBe("No answer");
    for (const label of tests) expect(cell("COMPARETWO", ...call, label)).toBe("all values equal: check the data");
    near("label swap", number("COMPARETWO", ...call, "Label-swap p"), 2 / 70);
    expect(cell("COMPARETWO", ...call, "cautions")).toMatch(/equal values\. Copied\?/);
  });

  it("within one group only is no such case", () => {
    expect(cell("COMPARETWO", [5, 5, 5, 5], [7, 8, 9, 8])).toBe("Up, enough to matter");
    expect(cell("COMPARETWO", [5, 5, 5, 5], [7, 8, 9, 8], "cautions")).not.toMatch(/Copied/);
  });
});

describe("no usable plants", () => {
  it("answers in text where, by address or by argument, and never with an error value", () => {
    expect(cell("COMPARETWO", ["lost", "not weighed"], [1, 2, 3])).toBe("No answer: no usable plants in usual");
    const placed = [at("Trial!B2:B4", [1, 2, 3]), at("Trial!C2:C4", ["lost", "lost", "lost"])];
    expect(cell("COMPARETWO", ...placed)).toBe("No answer: no usable plants in C2:C4");
    expect(cell("COMPARETWO", [null, ""], [1, 2, 3], "Verdict")).toBe("No answer: no usable plants in usual");
    for (const row of matrix("COMPARETWO", ["lost"], [1, 2], "table")) {
      expect(["string", "number"]).toContain(typeof row[1]);
    }
  });

  it("counts all lost plants as zero when told to", () => {
    const call = [[4, 5, 6, 5], Array(4).fill("lost")];
    expect(cell("COMPARETWO", ...call, "Change", null, null, null, "count as zero")).toBe(-1);
  });

  it("with pairs, where a partner is missing everywhere", () => {
    expect(cell("COMPARETWO", [1, 2, "lost"], ["lost", "lost", 3], null, "pairs")).toMatch(
      /^No answer: no usable plants/,
    );
  });
});

describe("a usual average not above 0", () => {
  const words = "usual average is not above 0: no percent";
  it.each([
    ["0", [-1, 1, -2, 2]],
    ["all 0", [0, 0, 0, 0]],
    ["below 0", [-4, -5, -6, -5]],
  ])("of %s: difference and p, percents in words, no answer", (_name, usual) => {
    const call = [usual, [3, 4, 5, 4.5]];
    expect(cell("COMPARETWO", ...call)).toBe("No answer");
    for (const label of ["Change", "Change low", "Change high", "Times as much"]) {
      expect(cell("COMPARETWO", ...call, label), label).toBe(words);
    }
    for (const label of ["Difference", "Difference low", "p value", "t"]) {
      expect(typeof cell("COMPARETWO", ...call, label), label).toBe("number");
    }
  });

  it("a new average below 0 has no percent either; one plant below 0 does no harm", () => {
    expect(cell("COMPARETWO", [3, 4, 5, 4], [-3, -4, -5, -4], "Change")).toBe("new average is below 0: no percent");
    expect(number("COMPARETWO", [3, 4, 5, 4], [-1, 6, 5, 4], "Change")).toBeCloseTo(-0.125, 12);
  });

  it("a new average of 0 is −100 %", () => {
    expect(cell("COMPARETWO", [3, 4, 5, 4], [0, 0, 0, 0], "Change")).toBe(-1);
  });
});

describe("how", () => {
  const usual = [12, 15, 11, 13, 14, 12.5];
  const tried = [18, 12, 19, 17, 22, 13];
  it.each([
    ["ranks", "separate"],
    ["pairs ranks", "pairs"],
  ])("'%s' changes p value, t, df and Method of '%s' only", (ranks, plain) => {
    const table = matrix("COMPARETWO", usual, tried, "table", ranks);
    const other = matrix("COMPARETWO", usual, tried, "table", plain);
    const changed = table.filter((row, at) => row[1] !== other[at]?.[1]).map(([label]) => label);
    expect(changed.toSorted()).toEqual(["Method", "df", "p value", "t"]);
    expect(cell("COMPARETWO", usual, tried, "df", ranks)).toBe("–");
  });

  it("'beds' is 'pairs' but for what Method calls an incomplete one", () => {
    const call = [
      [...usual, "lost", 3],
      [...tried, 4, null],
    ];
    const [beds, pairs] = ["beds", "pairs"].map((how) => matrix("COMPARETWO", ...call, "table", how));
    const changed = beds?.filter((row, at) => row[1] !== pairs?.[at]?.[1]).map(([label]) => label);
    expect(changed).toEqual(["Method"]);
    expect(cell("COMPARETWO", ...call, "Method", "beds")).toContain("2 incomplete beds left out");
    expect(cell("COMPARETWO", ...call, "Method", "pairs")).toContain("2 incomplete pairs left out");
    expect(cell("COMPARETWO", ...call, "Plants, usual", "pairs")).toBe(6);
    expect(cell("COMPARETWO", ...call, "Lost, usual", "pairs")).toBe(1);
  });

  it("a row empty on both sides is no pair", () => {
    const call = [
      [...usual.slice(0, 3), null, ...usual.slice(3)],
      [...tried.slice(0, 3), null, ...tried.slice(3)],
    ];
    expect(cell("COMPARETWO", ...call, "Method", "pairs")).not.toContain("incomplete");
    expect(cell("COMPARETWO", ...call, "Change", "pairs")).toBe(cell("COMPARETWO", usual, tried, "Change", "pairs"));
  });

  it("unequal heights are fine unless paired", () => {
    expect(cell("COMPARETWO", usual, tried.slice(0, 4), "Plants, new")).toBe(4);
  });

  it("label swaps beyond 3 000 000 and flips beyond 20 pairs are 20 000 draws, always the same", () => {
    const grow = (plants: number, from: number) =>
      Array.from({ length: plants }, (_, plant) => from + ((plant * 7) % 11));
    const [some, many] = [grow(13, 10), grow(13, 12.3)];
    const p = number("COMPARETWO", some, many, "Label-swap p");
    expect(cell("COMPARETWO", some, many, "Label-swap p")).toBe(p);
    near("hits and one", p * 20_001, Math.round(p * 20_001), { absolute: 1e-9 });
    expect(cell("COMPARETWO", some, many, "Method")).toMatch(/by lot.*20 000|20 000.*by lot/);
    expect(cell("COMPARETWO", grow(12, 10), grow(12, 12.3), "Method")).toMatch(/exact.*2 704 156/);
    const pairs = number("COMPARETWO", grow(21, 10), grow(21, 10.1).reverse(), "Label-swap p", "pairs");
    near("hits and one", pairs * 20_001, Math.round(pairs * 20_001), { absolute: 1e-9 });
    const twenty = number("COMPARETWO", grow(20, 10), grow(20, 10.1).reverse(), "Label-swap p", "pairs");
    near("of 2²⁰", twenty * 2 ** 20, Math.round(twenty * 2 ** 20), { absolute: 1e-6 });
  });

  it("ties but for rounding count as hits, and large averages do no harm", () => {
    expect(number("COMPARETWO", [0.1, 0.2, 0.3], [0.3, 0.2, 0.1], "Label-swap p")).toBe(1);
    const far = (values: readonly number[]) => values.map((value) => value + 1e8);
    near("t", number("COMPARETWO", far(usual), far(tried), "t"), number("COMPARETWO", usual, tried, "t"), {
      relative: 1e-7,
    });
  });
});
