import { describe, expect, it } from "vitest";
import { near } from "../near";
import doors from "../reference/doors.json";
import { cell, labels, matrix, number } from "./call";

const sets = Object.entries(doors.cases.two);
const usual = [12, 15, 11, 13, 14, 12];
const tried = [18, 21, 19, 17, 22, 20];

it("shows the verdict alone, and 24 labels in METHODS' order", () => {
  expect(cell("COMPARETWO", usual, tried)).toBe("Up, enough to matter");
  expect(cell("COMPARETWO", usual, tried, "ANSWER")).toBe("Up, enough to matter");
  expect(labels(matrix("COMPARETWO", usual, tried, "table"))).toEqual([
    "Verdict",
    "Average, usual",
    "Average, new",
    "Plants, usual",
    "Plants, new",
    "Lost, usual",
    "Lost, new",
    "Loss p",
    "Difference",
    "Difference low",
    "Difference high",
    "Change",
    "Change low",
    "Change high",
    "Times as much",
    "t",
    "df",
    "p value",
    "Label-swap p",
    "Unevenness, usual",
    "Unevenness, new",
    "One plant decides",
    "Method",
    "Cautions",
  ]);
});

it("every label alone shows what stands beside it in the table, letter case ignored", () => {
  for (const [label, value] of matrix("COMPARETWO", usual, tried, "table")) {
    expect(cell("COMPARETWO", usual, tried, String(label).toUpperCase()), String(label)).toBe(value);
  }
});

it("Cautions in the table is the show of that name", () => {
  const short = [usual.slice(0, 3), tried.slice(0, 3)];
  expect(cell("COMPARETWO", ...short, "cautions")).toMatch(/^With 3 plants against 3/);
  const table = matrix("COMPARETWO", ...short, "table");
  expect(table.at(-1)).toEqual(["Cautions", cell("COMPARETWO", ...short, "cautions")]);
});

interface Tested {
  readonly t: number;
  readonly df: number;
  readonly p: number;
  readonly low: number;
  readonly high: number;
  readonly percent: { readonly low: number | null; readonly high: number | null } | null;
}

function expectTest(call: readonly unknown[], options: readonly unknown[], expected: Tested): void {
  const shown = (label: string) => cell("COMPARETWO", ...call, label, ...options);
  const figure = (label: string) => Number(shown(label));
  near("t", figure("t"), expected.t);
  near("df", figure("df"), expected.df);
  near("p", figure("p value"), expected.p, { relative: 1e-9 });
  near("difference low", figure("Difference low"), expected.low, { relative: 1e-9 });
  near("difference high", figure("Difference high"), expected.high, { relative: 1e-9 });
  if (expected.percent === null) return;
  const { low, high } = expected.percent;
  if (low === null) expect(shown("Change low")).toBe("no lower limit above −100 %");
  else near("change low", figure("Change low"), low, { relative: 1e-8, absolute: 1e-10 });
  if (high === null) expect(shown("Change high")).toBe("no upper limit");
  else near("change high", figure("Change high"), high, { relative: 1e-8 });
}

describe.each(sets)("%s, by R", (_name, set) => {
  const call = [set.usual, set.new];

  it("separate plants: Welch's t, 95 % and 80 %", () => {
    expectTest(call, ["separate"], set.welch);
    expectTest(call, [null, null, 0.8], set.welch80);
  });

  it("equal unevenness: Student's t", () => {
    expectTest(call, ["equal unevenness"], set.student);
  });

  it("averages, difference, change and unevenness", () => {
    const [before, after] = [set.usual, set.new].map((all) => all.reduce((sum, value) => sum + value, 0) / all.length);
    if (before === undefined || after === undefined) throw new Error("no plants");
    near("usual", number("COMPARETWO", ...call, "Average, usual"), before);
    near("new", number("COMPARETWO", ...call, "Average, new"), after);
    near("difference", number("COMPARETWO", ...call, "Difference"), after - before, { relative: 1e-9 });
    near("change", number("COMPARETWO", ...call, "Change"), after / before - 1, { relative: 1e-9 });
    near("times", number("COMPARETWO", ...call, "Times as much"), after / before);
    near("unevenness, usual", number("COMPARETWO", ...call, "Unevenness, usual"), set.cv[0] ?? Number.NaN);
    near("unevenness, new", number("COMPARETWO", ...call, "Unevenness, new"), set.cv[1] ?? Number.NaN);
    expect(number("COMPARETWO", ...call, "Plants, usual")).toBe(set.usual.length);
    expect(number("COMPARETWO", ...call, "Plants, new")).toBe(set.new.length);
  });

  it("label swap and rank sum over every relabeling", () => {
    near("label swap", number("COMPARETWO", ...call, "Label-swap p"), set.swap, { relative: 1e-12 });
    near("W", number("COMPARETWO", ...call, "t", "ranks"), set.ranks.statistic);
    near("rank-sum p", number("COMPARETWO", ...call, "p value", "ranks"), set.ranks.p, { relative: 1e-12 });
  });
});

const pairedSets = sets.flatMap(([name, set]) => ("paired" in set ? [[name, set] as const] : []));

describe.each(pairedSets)("%s in pairs, by R", (_name, set) => {
  const call = [set.usual, set.new];

  it.each(["pairs", "beds"])("'%s': paired t and sign flips", (how) => {
    expectTest(call, [how], set.paired);
    near("sign flips", number("COMPARETWO", ...call, "Label-swap p", how), set.flip, { relative: 1e-12 });
  });

  it("signed ranks over all flips", () => {
    near("V", number("COMPARETWO", ...call, "t", "pairs ranks"), set.signedRanks.statistic);
    near("p", number("COMPARETWO", ...call, "p value", "pairs ranks"), set.signedRanks.p, { relative: 1e-12 });
  });
});

describe("lost plants", () => {
  it.each(doors.cases.losses)("Loss p is Fisher's exact test: $lost lost, $kept kept", ({ lost, kept, p }) => {
    const groups = [0, 1].map((group) => [
      ...Array<string>(lost[group] ?? 0).fill("lost"),
      ...Array.from({ length: kept[group] ?? 0 }, (_, plant) => 10 + group + plant),
    ]);
    near("loss p", number("COMPARETWO", ...groups, "Loss p"), p, { relative: 1e-12 });
    expect(number("COMPARETWO", ...groups, "Lost, usual")).toBe(lost[0]);
    expect(number("COMPARETWO", ...groups, "Lost, new")).toBe(lost[1]);
    expect(number("COMPARETWO", ...groups, "Plants, usual")).toBe(kept[0]);
  });

  it("no losses is said in words", () => {
    expect(cell("COMPARETWO", usual, tried, "Loss p")).toBe("no losses");
  });

  it("'count as zero' compares with lost plants as 0; every figure but counts and words is as if 0 were typed", () => {
    const call = [
      [...usual, "lost"],
      ["died – slugs", ...tried],
    ];
    const typed = [
      [...usual, 0],
      [0, ...tried],
    ];
    for (const how of ["separate", "equal unevenness", "pairs", "ranks", "pairs ranks"]) {
      const counted = matrix("COMPARETWO", ...call, "table", how, null, null, "Count as zero");
      const zeros = matrix("COMPARETWO", ...typed, "table", how);
      const rows = zeros.length - 3;
      const same = [...Array(rows).keys()].filter((row) => !/^Lost|^Loss/.test(String(zeros[row]?.[0])));
      expect(same.length).toBe(18);
      for (const row of same) expect(counted[row], how).toEqual(zeros[row]);
      expect(cell("COMPARETWO", ...call, "Lost, new", how, null, null, "count as zero")).toBe(1);
      expect(cell("COMPARETWO", ...call, "Method", how, null, null, "count as zero")).toMatch(
        /lost plants count as zero/,
      );
    }
  });
});
