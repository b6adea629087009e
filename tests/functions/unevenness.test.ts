import { describe, expect, it } from "vitest";
import { mean } from "../../src/numerics/moments";
import { printed } from "../methods/printed";
import { near } from "../near";
import doors from "../reference/doors.json";
import handbook from "../reference/handbook.json";
import manyOneWay from "../reference/manyOneWay.json";
import { at, cell, column, matrix, number, refused } from "./call";
import { demoPlants, mulch } from "./demo";

const header = [
  "Treatment",
  "Plants",
  "Average",
  "Standard deviation",
  "Unevenness",
  "Unevenness low",
  "Unevenness high",
  "Middle plant",
  "Lowest",
  "Highest",
  "Odd ones",
];
const amounts = demoPlants.map(({ grams }) => grams);
const treatments = demoPlants.map(({ treatment }) => treatment);
const beds = demoPlants.map(({ bed }) => bed);
const { unevenness } = doors.cases;

it("a table by rows: header, one row a treatment, then All without a standard deviation", () => {
  const table = matrix("UNEVENNESS", amounts, "table", treatments);
  expect(table[0]).toEqual(header);
  expect(table.slice(1).map(([name]) => name)).toEqual([...Object.keys(unevenness.treatments), "All"]);
  expect(table.at(-1)?.[3]).toBe("");
  expect(new Set(table.map((row) => row.length))).toEqual(new Set([11]));
});

it("each treatment's figures, by R", () => {
  const table = matrix("UNEVENNESS", amounts, "table", treatments);
  for (const [index, byR] of Object.values(unevenness.treatments).entries()) {
    const { plants, mean, sd, share, low, high, middle, lowest, highest } = byR;
    for (const [at, value] of [plants, mean, sd, share, low, high, middle, lowest, highest].entries()) {
      near(`${header[at + 1]}`, Number(table[index + 1]?.[at + 1]), value);
    }
  }
});

it("All: pooled within treatments, and within beds, by R", () => {
  const { pooled, withinBeds } = unevenness;
  near("pooled", number("UNEVENNESS", amounts, null, treatments), pooled.share);
  near("plan with", number("UNEVENNESS", amounts, "plan with", treatments), pooled.high);
  near("in beds", number("UNEVENNESS", amounts, null, treatments, beds), withinBeds.share);
  near("plan with", number("UNEVENNESS", amounts, "Plan With", treatments, beds), withinBeds.high);
  const all = matrix("UNEVENNESS", amounts, "table", treatments, beds).at(-1);
  near("low", Number(all?.[5]), withinBeds.low);
  expect(all?.[1]).toBe(30);
});

it("Marlpit Corner as printed (METHODS 11)", () => {
  const { unevenness: printed, withinBeds } = handbook.cases.demoMulches;
  for (const [index, name] of [...new Set(treatments)].entries()) {
    near(name, number("UNEVENNESS", mulch(name)), printed[index] ?? 0, { absolute: 5e-4 });
    near(name, number("UNEVENNESS", amounts, name.toUpperCase(), treatments), number("UNEVENNESS", mulch(name)));
  }
  near("within beds", number("UNEVENNESS", amounts, "All", treatments, beds), withinBeds, { absolute: 5e-4 });
});

it("insects after six sprays: the counts' spread over their average, as R's quasi-Poisson fit prints it", () => {
  const sprays = manyOneWay.cases.find(({ name }) => name === "InsectSprays") ?? expect.fail("no such trial");
  const counts = sprays.groups.flat();
  const names = sprays.groups.flatMap((group, at) => group.map(() => `spray ${at + 1}`));
  const [, ...rows] = matrix("UNEVENNESS", counts, "table", names).slice(0, -1);
  const [averages, spreads] = [2, 3].map((at) => rows.map((row) => Number(row[at])));
  const overdispersed = (averages ?? []).map((average, at) => (spreads?.[at] ?? Number.NaN) ** 2 / average);
  // Pearson's chi-square over its 66 degrees of freedom; twelve counts each, so the sprays weigh alike
  printed("dispersion", mean(overdispersed), "1.507713");
  printed("least", Math.min(...overdispersed), "0.86");
  printed("most", Math.max(...overdispersed), "2.32");
  const all = mean(averages ?? []);
  const explained = 2 * 12 * (averages ?? []).reduce((sum, average) => sum + average * Math.log(average / all), 0);
  printed("F", explained / 5 / mean(overdispersed), "41.216");
});

it("a column's label gives that column without its header", () => {
  const table = matrix("UNEVENNESS", amounts, "table", treatments);
  for (const [at, label] of header.entries()) {
    const shown = matrix("UNEVENNESS", amounts, label.toLowerCase(), treatments);
    expect(shown).toEqual(column(table.slice(1).map((row) => row[at])));
  }
});

it("without treatments: SD over average, under the heading's name", () => {
  const table = matrix("UNEVENNESS", mulch("Straw"), "table");
  expect(table.map(([name]) => name)).toEqual(["Treatment", "Straw", "All"]);
  near("unevenness", Number(table[1]?.[4]), unevenness.treatments.Straw.share);
  expect(table[2]?.slice(4, 7)).toEqual(table[1]?.slice(4, 7));
});

describe("words of METHODS win over a treatment's name", () => {
  it.each(["Plants", "words", "plan with", "ALL", "table"])("%s", (name) => {
    const call = [[1, 2, 3, 5], name, [name, name, "b", "b"]];
    const other = [[1, 2, 3, 5], name, ["a", "a", "b", "b"]];
    const shown = JSON.stringify(matrix("UNEVENNESS", ...other)).replaceAll('"a"', JSON.stringify(name));
    if (name === "ALL") expect(matrix("UNEVENNESS", ...call)).not.toEqual([[""]]);
    else expect(JSON.stringify(matrix("UNEVENNESS", ...call))).toBe(shown);
  });
});

describe("no figure", () => {
  it("one plant", () => {
    expect(cell("UNEVENNESS", [4])).toBe("one plant");
    const table = matrix("UNEVENNESS", [4, 5, 6], "table", ["a", "b", "b"]);
    expect(table[1]).toEqual(["a", 1, 4, "one plant", "one plant", "one plant", "one plant", 4, 4, 4, ""]);
    near("All", Number(table[3]?.[4]), Math.SQRT1_2 / 5.5);
  });

  it("an average of 0", () => {
    expect(cell("UNEVENNESS", [0, 0, "none"])).toBe("average is 0");
    expect(cell("UNEVENNESS", [-1, 1, 0])).toBe("average is 0");
  });

  it("all equal is 0, and looks copied", () => {
    expect(cell("UNEVENNESS", [4, 4, 4])).toBe(0);
    expect(cell("UNEVENNESS", [4, 4, 4], "plan with")).toBe(0);
    expect(cell("UNEVENNESS", [4, 4, 4], "cautions")).toMatch(/equal values\. Copied\?/);
    expect(cell("UNEVENNESS", [4, 4, 5], "cautions")).not.toMatch(/Copied/);
    expect(cell("UNEVENNESS", [4], "cautions")).not.toMatch(/Copied/);
  });

  it("no usable plants is #N/A", () => {
    const { code, message } = refused("UNEVENNESS", at("Trial!B2:B3", ["lost", "n/a"]));
    expect(code).toBe("#N/A");
    expect(message).toMatch(/^No usable plants in B2:B3\./);
  });
});

describe("rows", () => {
  it("lost, not recorded and left-out rows count nowhere; labels are told by their letters alone", () => {
    const call = [[4, 5, "lost", "?", 6, 7, 99], "table", ["Straw", "straw ", "STRAW", "Straw", "Bare", " bare", null]];
    const table = matrix("UNEVENNESS", ...call);
    expect(table.map(([name, plants]) => [name, plants])).toEqual([
      ["Treatment", "Plants"],
      ["Straw", 2],
      ["Bare", 2],
      ["All", 4],
    ]);
  });

  it("any measurement may be below zero", () => {
    expect(matrix("UNEVENNESS", [-1, 4, 6], "Lowest")).toEqual([[-1], [-1]]);
  });

  it("odd ones are named by place: five times the middle value, or far beyond the rest of ten", () => {
    const placed = at("Trial!C2:C6", [4, 5, 6, 5, 50]);
    expect(matrix("UNEVENNESS", placed, "Odd ones")).toEqual([["C6"], ["C6"]]);
    expect(cell("UNEVENNESS", placed, "cautions")).toMatch(/^Cell C6 is far from the rest/);
    const ten = [10, 11, 12, 10, 11, 12, 10, 11, 12, 21];
    expect(matrix("UNEVENNESS", ten, "Odd ones")).toEqual([["row 10 of amounts"], ["row 10 of amounts"]]);
    expect(matrix("UNEVENNESS", ten.slice(1), "Odd ones")).toEqual([[""], [""]]);
  });

  it("ranges that belong together differ in height: both heights", () => {
    const { code, message } = refused("UNEVENNESS", [1, 2, 3], null, ["a", "b"]);
    expect(code).toBe("#VALUE!");
    expect(message).toMatch(/3.*2/);
    expect(refused("UNEVENNESS", ["a", "b", "a"], null, [1, 2, 3]).message).toMatch(/^The two ranges look swapped/);
  });
});
