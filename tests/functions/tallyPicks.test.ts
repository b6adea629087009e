import { describe, expect, it } from "vitest";
import { near } from "../near";
import { at, cell, matrix, refused } from "./call";

it.each(["g", "kg", "count", "ml", "ft"])("“%s” in the place of show is told where it goes", (unit) => {
  expect(refused("TALLYPICKS", ["A1", "A2"], null, [4, 6], unit).message).toMatch(/it goes four places further on/);
});

it("a plant that is named like a unit can be asked for all the same", () => {
  expect(cell("TALLYPICKS", ["M", "L"], null, [4, 6], "m")).toBe(4);
});

describe("rules of METHODS 3, 4.1 and 8.13", () => {
  const short = { plants: ["A1", "A2", "A1", "A2"], dates: ["2023-07-01", "2023-07-01", "2023-07-08", "2023-07-08"] };
  const one = (amounts: readonly unknown[], show: unknown = null, ...rest: readonly unknown[]) =>
    matrix("TALLYPICKS", short.plants, short.dates, amounts, show, ...rest);

  it("dates may be left empty: then nothing is said of days or doubles", () => {
    const table = matrix("TALLYPICKS", ["A1", "A1"], null, [5, 5]);
    expect(table[1]).toEqual(["A1", "", "", 10, 2, "", "", "ok", "", ""]);
  });

  it("none-words are 0 and no picks; a text is a weight missing and its plant's total at least that", () => {
    expect(one([5, "-", "forgot", "none"])).toEqual([
      expect.anything(),
      [
        "A1",
        "",
        "",
        5,
        2,
        "2023-07-01",
        "2023-07-08",
        "weight missing (1)",
        "",
        "row 3 of amounts “forgot” is no amount",
      ],
      ["A2", "", "", 0, 0, "", "", "ok", "", ""],
    ]);
  });

  it("a plant is lost whatever the order of rows; picks dated after the loss are told", () => {
    expect(one([5, "lost (slugs)", "dead", 7])).toEqual([
      expect.anything(),
      ["A1", "", "", "lost", 1, "2023-07-01", "2023-07-01", "lost", 5, "row 3 of amounts says “dead”"],
      [
        ...["A2", "", "", "lost", 1, "2023-07-08", "2023-07-08", "lost, picked later", 7],
        "row 2 of amounts says “lost (slugs)”; 7 of it is dated after the loss",
      ],
    ]);
    expect(one([5, "lost", 6, 0])[2]?.[7]).toBe("lost");
  });

  it("labels by case, spaces and spaces round marks are one plant", () => {
    expect(matrix("TALLYPICKS", ["B1-1", "b1 - 1", " B1-1 "], null, [1, 2, 4]).slice(1)).toHaveLength(1);
  });

  it("the commoner name is used, of two equally common the first, with both counts", () => {
    const plants = ["A", "A", "B", "B", "B", "C", "D"];
    const names = ["x", "y", "x", "z", "z", "x", "y"];
    const table = matrix("TALLYPICKS", plants, null, [1, 1, 1, 1, 1, 1, 1], null, names);
    expect(table.slice(1, 3).map((line) => [line[1], line[9]])).toEqual([
      ["x", "treatment: x in 1 row and y in 1 row"],
      ["z", "treatment: z in 2 rows and x in 1 row"],
    ]);
  });

  it("is refused when most plants have two treatments, or two beds", () => {
    const names = ["x", "x", "y", "y"];
    expect(refused("TALLYPICKS", short.plants, null, [1, 2, 3, 4], null, names)).toEqual({
      code: "#VALUE!",
      message:
        "Most plants have more than one treatment: “A1” has “x” and “y”. Give each plant a label of its own, such as B1-2.",
    });
    expect(refused("TALLYPICKS", short.plants, null, [1, 2, 3, 4], null, null, [1, 1, 2, 2]).message).toContain("bed");
  });

  it("amounts below zero are refused with their place, except in rows of no plant", () => {
    const amounts = at("Log!F2:F5", [1, 2, -3, 4]);
    expect(refused("TALLYPICKS", short.plants, null, amounts).message).toContain("Cell F4 holds −3");
    expect(matrix("TALLYPICKS", ["A1", "A2", "Week total", "A2"], null, amounts)[2]?.[3]).toBe(6);
  });

  it("ranges of different height, and ranges that look swapped, are refused", () => {
    expect(refused("TALLYPICKS", ["A1", "A2"], null, [1, 2, 3]).message).toContain("Amounts has 3 rows");
    expect(refused("TALLYPICKS", [1, 2, 3], null, ["A1", "A2", "A1"]).message).toMatch(/look swapped/);
    expect(refused("TALLYPICKS", ["A1", "A2", "A1"], [4, 5, 6], short.dates.slice(0, 3)).message).toMatch(/swapped/);
  });

  it("rows without a label are left out and counted; empty rows are not there", () => {
    const plants = ["A1", null, "A2", null, "Weekly sum"];
    const table = matrix("TALLYPICKS", plants, null, [1, null, 2, 3, 6]);
    expect(table.at(-1)).toEqual([...["left out", "", "", "", 2, "", "", "", ""], "row 4 of plants, row 5 of plants"]);
    expect(matrix("TALLYPICKS", ["Summer 1", "Meaning"], null, [1, 2])).toHaveLength(3);
  });

  it("doubtful numbers, dates Excel made and mixed units are no amounts", () => {
    const plants = ["A1", "A1", "A1", "A1", "A1"];
    const table = matrix("TALLYPICKS", plants, null, [200, 300, "1,250", 45112, "5 cm"], null, null, null, null, "g");
    expect(table[1]?.slice(3, 8)).toEqual([500, 5, "", "", "weight missing (3)"]);
  });

  it("a treatment that was still cropping in the last week is named", () => {
    const text = String(cell("TALLYPICKS", short.plants, short.dates, [9, 5, 1, 5], "cautions", ["x", "y", "x", "y"]));
    expect(text).toContain("Y was still cropping: 50 % came in the last week.");
  });
});

describe("units", () => {
  const plants = ["A1", "A1", "A2"];
  const totals = (amounts: readonly unknown[], unit: unknown) =>
    matrix("TALLYPICKS", ["plant", ...plants], null, amounts, "Total", null, null, null, unit).flat();

  it("bare numbers are in the heading's unit, and totals in the one asked for", () => {
    expect(totals(["grams", 200, "0.3 kg", 50], null)).toEqual([500, 50]);
    expect(totals(["Weight (kg)", 0.2, "300 g", 0.05], "grams")).toEqual([500, 50]);
    // NIST Handbook 44, appendix C: 1 lb is 453.59237 g
    const [pounds] = totals(["g", 453.59237, 453.59237, 0], "lb");
    near("pounds", Number(pounds), 2, { relative: 1e-15 });
  });

  it("without a heading they are in the unit asked for, else in the one that fits those typed", () => {
    expect(matrix("TALLYPICKS", plants, null, [200, "0.3kg", 50], "Total").flat()).toEqual([500, 50]);
    expect(matrix("TALLYPICKS", plants, null, [0.2, "300 g", "0.05 kg"], "Total").flat()).toEqual([0.5, 0.05]);
    expect(matrix("TALLYPICKS", plants, null, [2, "1 kg", 5], "Total", null, null, null, "lb").flat()[0]).toBeCloseTo(
      4.2046226218,
      9,
    );
  });

  it("units of another kind, and unknown ones, are refused", () => {
    const call = ["TALLYPICKS", ["plant", "A1"], null, ["g", 5], null, null, null, null] as const;
    expect(refused(...call, "ml").message).toBe("Amounts is in g, but unit is in ml. Put both in one unit.");
    expect(refused(...call, "count").code).toBe("#VALUE!");
    expect(refused(...call, "bushel").message).toContain("Unit cannot be “bushel”.");
  });
});

describe("all_plants", () => {
  const log = [["A1", "A2", "A1"], null, [1, 2, 4]] as const;
  const treatments = ["Straw", "Bare", "Straw"];
  const listed = (list: unknown, names: unknown = null) => matrix("TALLYPICKS", ...log, null, names, null, list);

  it("plants never picked appear with 0, in the list's order; others are kept and noted", () => {
    expect(
      listed(["plant", "A3", "A1"])
        .slice(1)
        .map((line) => [line[0], line[3], line[4], line[7], line[9]]),
    ).toEqual([
      ["A3", 0, 0, "ok", ""],
      ["A1", 5, 2, "ok", ""],
      ["A2", 2, 1, "ok", "not in the list of all plants"],
    ]);
  });

  it("its treatment and bed win over the log's, differences noted", () => {
    const list = [
      ["Plant", "Mulch", "Bed"],
      ["a1", "Woodchip", 7],
      ["A3", "Straw", 8],
      ["A2", null, 9],
    ];
    expect(
      listed(list, treatments)
        .slice(1)
        .map((line) => [...line.slice(0, 4), line[9]]),
    ).toEqual([
      ["a1", "Woodchip", "7", 5, "treatment: listed as Woodchip, in the log Straw"],
      ["A3", "Straw", "8", 0, ""],
      ["A2", "Bare", "9", 2, ""],
    ]);
  });

  it("a plant never picked needs its treatment where treatments are given", () => {
    expect(refused("TALLYPICKS", ...log, null, treatments, null, ["A1", "A2", "A3"])).toEqual({
      code: "#VALUE!",
      message: "“A3” was never picked and has no treatment. Give it in the second column of all_plants.",
    });
  });

  it("an empty list is none", () => {
    expect(
      listed([null, null])
        .slice(1)
        .map((line) => line[9]),
    ).toEqual(["", ""]);
  });

  it("a plant listed twice counts once; more than three columns are refused", () => {
    const text = String(cell("TALLYPICKS", ...log, "cautions", null, null, ["A1", "A2", "A1"]));
    expect(text).toContain("Some plants stand more than once in all_plants.");
    expect(listed(["A1", "A2", "A1"])).toHaveLength(3);
    expect(refused("TALLYPICKS", ...log, null, null, null, [["A1", "x", 1, 2]]).message).toContain("has 4 columns");
  });
});

it("nothing to tally is told: #N/A", () => {
  expect(refused("TALLYPICKS", [null, null], null, [null, null])).toEqual({
    code: "#N/A",
    message: "No picks in plants. Give one row per pick, each with its label.",
  });
});
