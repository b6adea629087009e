import { describe, expect, it } from "vitest";
import { near } from "../near";
import { at, cell, labels, matrix, refused } from "./call";
import { csvRows, demoLog, logColumn } from "./demoLog";

const messy = demoLog("demoLogMessy");
const clean = demoLog("demoLogClean");
/** What METHODS section 4 makes of the messy log, and the truth behind it (our demo's own file; NA: not known). */
const [, ...expected] = csvRows("demoLogMessyTotals");

function tally(log: typeof messy, amounts: string, show: unknown = null, ...rest: readonly unknown[]) {
  const column = (heading: string) => logColumn(log, heading);
  return matrix(
    "TALLYPICKS",
    column("plant"),
    column("date"),
    column(amounts),
    show,
    column("mulch"),
    column("bed"),
    ...rest,
  );
}

function row(table: readonly (readonly unknown[])[], plant: string): Readonly<Record<string, unknown>> {
  const found = table.find(([name]) => name === plant) ?? expect.fail(`no row for ${plant}`);
  return Object.fromEntries((table[0] ?? []).map((label, column) => [String(label), found[column]]));
}

describe("the messy log of Marlpit Corner, with its 20 planted slips", () => {
  const grams = tally(messy, "grams");

  it("has METHODS' columns, a row per plant in order of the log, and the rows left out last", () => {
    expect(grams[0]).toEqual("Plant/Treatment/Bed/Total/Picks/First/Last/Status/Picked before loss/Notes".split("/"));
    expect(labels(grams).slice(1, 4)).toEqual(["B1-2", "B2-3", "B2-4"]);
    expect(labels(grams)).toHaveLength(34);
    expect(grams.at(-1)).toEqual(["left out", "", "", "", 2, "", "", "", "", "C108, C208"]);
  });

  it.each(expected.filter(([plant = ""]) => !["B2-1", "B4-3"].includes(plant)))(
    "%s: %s g, %s fruit, %s weights missing",
    (plant = "", weight, fruit, missing) => {
      const [byWeight, byFruit] = [row(grams, plant), row(tally(messy, "fruit"), plant)];
      expect(byWeight.Total).toBe(Number(weight));
      expect(byWeight.Status).toBe(missing === "0" ? "ok" : `weight missing (${missing})`);
      expect(byWeight["Picked before loss"]).toBe("");
      expect([byFruit.Total, byFruit.Status]).toEqual([Number(fruit), "ok"]);
    },
  );

  it("lost plants: the word in Total, what was picked before beside it", () => {
    const { Total, Status, Picks, First, Notes } = row(grams, "B2-1");
    expect([Total, Status, Picks, First, Notes]).toEqual(["lost", "lost", 0, "", "F331 says “dead”"]);
    expect(row(grams, "B2-1")["Picked before loss"]).toBe(0);
    const wheelbarrow = row(grams, "B4-3");
    expect([wheelbarrow.Total, wheelbarrow.Status, wheelbarrow["Picked before loss"]]).toEqual(["lost", "lost", 1365]);
  });

  it("the fruit of lost plants, with the grams' column for the words of loss", () => {
    const fruit = tally(messy, "fruit", null, null, null, logColumn(messy, "grams"));
    const columns = ["Total", "Status", "Picked before loss", "Notes"];
    const of = (plant: string) => columns.map((column) => row(fruit, plant)[column]);
    expect(of("B2-1")).toEqual(["lost", "lost", 0, "F331 says “dead”"]);
    expect(of("B4-3")).toEqual(["lost", "lost", 6, "F332 says “lost”; E136 “1+1” read as 2"]);
    expect(row(fruit, "B2-2").Total).toBe(10);
  });

  it("without it the fruit of those rows are not recorded, as the word stands among the grams only", () => {
    const fruit = tally(messy, "fruit");
    expect([row(fruit, "B2-1").Total, row(fruit, "B2-1").Status]).toEqual(["not recorded", "weight missing (1)"]);
    expect([row(fruit, "B4-3").Total, row(fruit, "B4-3").Status]).toEqual([6, "weight missing (1)"]);
  });

  it("every slip that changes a reading is noted with its cell", () => {
    const notes = Object.fromEntries(grams.slice(1, -1).map((line) => [line[0], line[9]]));
    expect(Object.fromEntries(Object.entries(notes).filter(([, note]) => note !== ""))).toEqual({
      "B2-4": "A73 has no date",
      "B4-2": "F27 “177 g” read as 177",
      "B5-2": "F60 is far above the rest: 2220",
      "B6-2": "F158 “0,726 kg” read as 726",
      "B7-3": "F204 “approx 179” read as 179",
      "B8-2": "treatment: Bare soil in 9 rows and bare in 1 row",
      "B1-4": "date unclear: A72 “5/7”",
      "B4-1": "F14 “0.235kg” read as 235",
      "B8-1": "C219 entered twice (like C218), counted twice",
      "B8-3": "F106 “506*” read as 506",
      "B4-3": "F332 says “lost”",
      "B2-2": "F92 is empty",
      "B2-1": "F331 says “dead”",
    });
  });

  it("treatment, bed, picks and dates of the plants", () => {
    const { Treatment, Bed, Picks, First, Last } = row(grams, "B8-2");
    expect([Treatment, Bed, Picks, First, Last]).toEqual(["Bare soil", "8", 10, "2023-06-24", "2023-08-02"]);
  });

  it.each([
    ["Treatment", 1],
    ["Bed", 2],
    ["Picks", 4],
  ] as const)("%s of every plant as in the clean log, but for the doubled row", (_, column) => {
    const byPlant = (table: typeof grams) => new Map(table.slice(1).map((line) => [line[0], line[column]]));
    const found = byPlant(grams);
    for (const [plant, value] of byPlant(tally(clean, "grams"))) {
      const doubled = plant === "B8-1" && column === 4;
      expect(found.get(plant), String(plant)).toBe(doubled ? Number(value) + 1 : value);
    }
  });

  it("words, cautions and the number of rows left out", () => {
    expect(tally(messy, "grams", "words")).toEqual([
      [
        "328 rows make 32 plants: 29 complete, 2 lost, 1 with a weight missing. 2 rows of totals were left out. " +
          "Plants lost: 1 of 8 Straw and 1 of 8 Grass clippings.",
      ],
    ]);
    expect(tally(messy, "grams", "cautions")).toEqual([
      [
        "Plants lost: 1 of 8 Straw and 1 of 8 Grass clippings. 2 dates could not be read for certain. " +
          "5 cells had units or marks typed in; they were read as numbers. One place, one season.",
      ],
    ]);
    expect(tally(messy, "grams", "left out")).toEqual([[2]]);
    expect(tally(messy, "grams", "b5-2")).toEqual([[5240]]);
  });

  it("a column alone has no header and no row of what was left out", () => {
    const total = tally(messy, "grams", "Total");
    expect(total).toHaveLength(32);
    expect(total[0]).toEqual([2252]);
  });
});

it("its columns give COMPAREMANY what it needs, lost plants among them (METHODS 11: straw +45.52 %)", () => {
  const lost = [
    ["2023-06-05", 2, "B2-1", "Grass clippings", null, "dead"],
    ["2023-07-14", 4, "B4-3", "Straw", null, "lost"],
  ];
  const [total, treatment, bed] = ["Total", "Treatment", "Bed"].map((show) =>
    tally([...clean, ...lost], "grams", show).flat(),
  );
  expect(cell("COMPAREMANY", total, treatment, "Straw", bed, "Bare soil")).toBe("Up, enough to matter");
  const [, straw = []] = matrix("COMPAREMANY", total, treatment, "table", bed, "Bare soil");
  near("change", Number(straw[1]), 0.4552, { absolute: 0.00005 });
});

it("the clean log gives the truth (the demo's own plants)", () => {
  const grams = tally(clean, "grams");
  for (const [plant = "", , , , weight, fruit] of expected) {
    if (weight === "NA") continue;
    expect(row(grams, plant).Total, plant).toBe(Number(weight));
    expect(row(tally(clean, "fruit"), plant).Total, plant).toBe(Number(fruit));
  }
  expect(labels(grams).at(-1)).not.toBe("left out");
});

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
