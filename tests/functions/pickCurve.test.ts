import { describe, expect, it } from "vitest";
import picksInR from "../reference/picks.json";
import { at, cell, labels, matrix, refused } from "./call";
import { demoLog, logColumn } from "./demoLog";

const { cases: reference } = picksInR;
const clean = demoLog("demoLogClean");
const log = ["mulch", "date", "grams"].map((heading) => logColumn(clean, heading));

describe("the clean log of Marlpit Corner (R, tests/reference/picks.R)", () => {
  const table = matrix("PICKCURVE", ...log, null, 8);

  it("a column per mulch in order of appearance, a row per week, the last week's share below", () => {
    expect(table[0]).toEqual(["Date", ...reference.mulches]);
    expect(labels(table).slice(1, 4)).toEqual(["2023-06-24", "2023-07-01", "2023-07-08"]);
    expect(labels(table).slice(-2)).toEqual(["2023-08-30", "Share in last 7 days"]);
  });

  it("running totals per plant set out (METHODS 11: by 15 July woodchip 1112, bare soil 1651 g)", () => {
    expect(table.slice(1, -1).map((row) => row.slice(1))).toEqual(reference.running);
    const july = table.find(([date]) => date === "2023-07-15");
    expect([july?.[4], july?.[1]]).toEqual([1112.5, 1650.875]);
  });

  it("shares of the last seven days (METHODS 11: 1.8 to 4.2 %, no caution)", () => {
    expect(table.at(-1)?.slice(1)).toEqual(reference.lastWeek);
    expect(matrix("PICKCURVE", ...log, "share in last 7 days", 8)).toEqual([reference.lastWeek]);
    expect(cell("PICKCURVE", ...log, "cautions", 8)).toBe("One place, one season.");
  });

  it("words tell the days of half the harvest", () => {
    const days = reference.mulchHalves.map((day, mulch) => `day ${day} (${reference.mulches[mulch]})`);
    expect(cell("PICKCURVE", ...log, "words", 8)).toBe(
      `Half the harvest was in by ${days.slice(0, 3).join(", ")} and ${days[3]}. ` +
        "Earlier is not more: look at totals too. One place, one season.",
    );
  });

  it("a column alone has neither header nor share", () => {
    expect(matrix("PICKCURVE", ...log, "woodchip", 8).flat()).toEqual(reference.running.map(([, , , last]) => last));
  });

  it("without plants_each: totals, with a caution", () => {
    const totals = matrix("PICKCURVE", ...log, "Straw").flat();
    expect(totals).toEqual(reference.running.map(([, straw = 0]) => straw * 8));
    expect(cell("PICKCURVE", ...log, "cautions")).toMatch(/^These are totals, not amounts per plant\./);
  });
});

describe("plants_each", () => {
  const short = [
    ["x", "y", "x"],
    ["2023-07-01", "2023-07-02", "2023-07-09"],
    [6, 4, 2],
  ] as const;
  const table = (plants: unknown, days: unknown = null) => matrix("PICKCURVE", ...short, null, plants, days);

  it("names and numbers in two columns, with or without a heading; a treatment never picked is there with 0", () => {
    const numbers = [
      ["Mulch", "plants"],
      ["Y", 4],
      ["x", 2],
      ["z", 3],
    ];
    expect(table(numbers)[3]).toEqual(["2023-07-09", 4, 1, 0]);
    expect(table(numbers.slice(1))[3]).toEqual(["2023-07-09", 4, 1, 0]);
    expect(table(numbers).at(-1)?.slice(-1)).toEqual(["no harvest"]);
  });

  it("a treatment it does not name, a number that is none and three columns are refused", () => {
    expect(
      refused("PICKCURVE", ...short, null, [
        ["x", 2],
        ["z", 3],
      ]).message,
    ).toContain("does not name “y”");
    expect(
      refused("PICKCURVE", ...short, null, [
        ["x", 2],
        ["y", null],
      ]).message,
    ).toContain("does not name “y”");
    expect(
      refused("PICKCURVE", ...short, null, [
        ["x", 2],
        ["y", 2.5],
      ]).message,
    ).toContain("whole number");
    expect(refused("PICKCURVE", ...short, null, 0).message).toContain("whole number");
    expect(refused("PICKCURVE", ...short, null, [["x", 2, 3]]).message).toContain("Give two:");
  });

  it("days per step", () => {
    expect(labels(table(1, 1))).toHaveLength(11);
    expect(labels(table(1, 5)).slice(1, -1)).toEqual(["2023-07-01", "2023-07-06", "2023-07-09"]);
    expect(refused("PICKCURVE", ...short, null, 1, 0).message).toContain("Days is 0.");
  });
});

describe("rows and dates (METHODS 8.14)", () => {
  it("unreadable dates are left out and counted", () => {
    const dates = ["2023-07-01", "5/7", "2023-07-09"];
    expect(matrix("PICKCURVE", ["x", "x", "x"], dates, [6, 4, 2], "x", 1).flat()).toEqual([6, 6, 8]);
    expect(cell("PICKCURVE", ["x", "x", "x"], dates, [6, 4, 2], "cautions", 1)).toContain("1 date could not be read");
  });

  it("year-less dates are shown as they are", () => {
    expect(labels(matrix("PICKCURVE", ["x", "x"], ["5 July", "7 July"], [6, 2], null, 1)).slice(1, 3)).toEqual([
      "5 July",
      "7 July",
    ]);
  });

  it("two seasons, no dates and no rows are refused", () => {
    expect(refused("PICKCURVE", ["x", "x"], ["2023-07-01", "2024-08-05"], [1, 2])).toEqual({
      code: "#VALUE!",
      message: "The dates are 401 days apart. Are these two seasons? Give one at a time.",
    });
    expect(matrix("PICKCURVE", ["x", "x"], ["2023-07-01", "2024-08-04"], [1, 2], "x", 1).flat().at(-1)).toBe(3);
    const soon = at("Log!B2:B3", ["soon", "5/7"]);
    expect(refused("PICKCURVE", ["x", "x"], soon, [1, 2])).toEqual({
      code: "#N/A",
      message: "No date in B2:B3 could be read for certain. Write dates like 2023-07-05.",
    });
    expect(refused("PICKCURVE", [null, "total"], ["2023-07-01", "2023-07-02"], [1, 2]).message).toContain("No picks");
  });

  it("an amount below zero is refused", () => {
    expect(refused("PICKCURVE", ["x"], ["2023-07-01"], [-1]).message).toContain("cannot be below zero");
  });
});
