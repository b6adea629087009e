import { describe, expect, it } from "vitest";
import { near } from "../near";
import { cell, labels, matrix } from "./call";
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
