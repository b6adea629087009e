import { describe, expect, it } from "vitest";
import { near } from "../near";
import picksInR from "../reference/picks.json";
import { cell, matrix, refused } from "./call";
import { demoLog, logColumn } from "./demoLog";

const { cases: reference } = picksInR;
const clean = demoLog("demoLogClean");
const log = ["plant", "date", "grams"].map((heading) => logColumn(clean, heading));
const halves: Readonly<Record<string, number>> = reference.halves;

describe("the clean log of Marlpit Corner (R, tests/reference/picks.R)", () => {
  it("the day of each plant, counted from the first pick", () => {
    const [header, ...rows] = matrix("HALFPICKED", ...log);
    expect(header).toEqual(["Plant", "Day"]);
    expect(Object.fromEntries(rows)).toEqual(halves);
  });

  it("counted from another start; by a plant's name; the column alone", () => {
    expect(cell("HALFPICKED", ...log, "b1-1", "2023-06-14")).toBe((halves["B1-1"] ?? 0) + 10);
    expect(cell("HALFPICKED", ...log, "B1-1", 45111)).toBe((halves["B1-1"] ?? 0) - 10);
    expect(matrix("HALFPICKED", ...log, "Day")).toHaveLength(31);
  });

  it("woodchip against bare soil in days (METHODS 11: 28.4 v 21.3, Welch p .158)", () => {
    const mulchOf = new Map(clean.map((row) => [row[2], row[3]]));
    const daysOf = (mulch: string) =>
      matrix("HALFPICKED", ...log)
        .slice(1)
        .flatMap(([plant, day]) => (mulchOf.get(String(plant)) === mulch ? [day] : []));
    const call = [daysOf("Bare soil"), daysOf("Woodchip")] as const;
    expect(cell("COMPARETWO", ...call, "Average, usual", null, -0.1)).toBe(21.25);
    expect(cell("COMPARETWO", ...call, "Average, new", null, -0.1)).toBe(28.375);
    near("p", Number(cell("COMPARETWO", ...call, "p value", null, -0.1)), 0.158411144, { absolute: 5e-10 });
  });

  it("speaks in days", () => {
    const words = String(cell("HALFPICKED", ...log, "words"));
    expect(words).toBe(
      "For 31 plants, half the harvest was in by day 21.9 on average, from day 11 to day 39. " +
        "Earlier is not more: look at totals too. One place, one season.",
    );
    const all = Object.values(halves);
    near("average", 21.9, all.reduce((sum, day) => sum + day, 0) / all.length, { absolute: 0.05 });
  });
});

describe("rules of METHODS 8.15", () => {
  const plants = ["A", "A", "B", "C", "C", "D"];
  const dates = ["2023-07-01", "2023-07-08", "2023-07-08", "2023-07-03", "2023-07-08", "2023-07-08"];

  it("no harvest is no 0; lost is lost; what was not read is not recorded", () => {
    expect(matrix("HALFPICKED", plants, dates, [5, 5, 0, 7, "dead", "forgot"]).slice(1)).toEqual([
      ["A", 0],
      ["B", "no harvest"],
      ["C", "lost"],
      ["D", "not recorded"],
    ]);
  });

  it("picks without a certain date are left out and counted", () => {
    const unclear = ["2023-07-01", "5/7", "2023-07-08"];
    expect(cell("HALFPICKED", ["A", "A", "A"], unclear, [1, 9, 3], "A")).toBe(7);
    expect(cell("HALFPICKED", ["A", "A", "A"], unclear, [1, 9, 3], "cautions")).toContain("1 date could not be read");
  });

  it("a start that is no certain date, no dates, two seasons, and amounts below zero are refused", () => {
    const call = [
      ["A", "A"],
      ["2023-07-01", "2023-07-08"],
      [1, 2],
    ] as const;
    expect(refused("HALFPICKED", ...call, null, "5/7").message).toBe(
      "Start is “5/7”, which is no certain date. Write it like 2023-07-05.",
    );
    expect(refused("HALFPICKED", call[0], null, call[2]).message).toContain("Nothing was given for dates.");
    expect(refused("HALFPICKED", call[0], ["x", "y"], call[2]).code).toBe("#N/A");
    expect(refused("HALFPICKED", call[0], ["2022-07-01", "2023-09-01"], call[2]).message).toContain("two seasons");
    expect(refused("HALFPICKED", call[0], call[1], [1, -2]).message).toContain("below zero");
  });
});
