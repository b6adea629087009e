import { describe, expect, it } from "vitest";
import type { Cell } from "../../src/nouns/cell";
import { plainCell } from "../../src/ranges/plainCell";

describe("one cell into grams (METHODS 3 and 8.12)", () => {
  it.each<[Cell, number, string | undefined]>([
    [506, 506, undefined],
    [-3, -3, undefined],
    ["506", 506, undefined],
    [0, 0, "zero"],
    ["506*", 506, "mark-removed"],
    ["approx 179", 179, "mark-removed"],
    ["1+1", 2, "mark-removed"],
    ["1.250", 1.25, "mark-removed"],
    ["0,726 kg", 726, "unit-converted"],
    ["1,250 kg", 1250, "unit-converted"],
    ["177 g", 177, "unit-converted"],
    ["none", 0, "none-as-zero"],
    ["–", 0, "none-as-zero"],
  ])("%s", (cell, value, kind) => {
    const read = plainCell(cell, "g");
    expect(read.cell).toEqual({ is: "number", value });
    expect(read.remark?.kind).toBe(kind);
  });

  it.each<[Cell, string, string]>([
    ["forgot", "unreadable", "unreadable"],
    ["2 (1 split)", "unreadable", "unreadable"],
    ["15%", "unreadable", "unreadable"],
    ["1,250", "doubtful", "unreadable"],
    ["12 cm", "wrong-unit", "unreadable"],
    [true, "unreadable", "unreadable"],
    [{ error: "#N/A" }, "unreadable", "error"],
  ])("%s is refused", (cell, why, kind) => {
    const read = plainCell(cell, "g");
    expect(read.cell).toMatchObject({ is: "refused", problem: { problem: "not-plain", because: { why } } });
    expect(read.remark?.kind).toBe(kind);
  });

  it.each<[Cell, object]>([
    ["506*", { kind: "mark-removed", amount: { value: 506, unit: "g" } }],
    ["0,726 kg", { kind: "unit-converted", amount: { value: 726, unit: "g" } }],
    ["12 cm", { kind: "unreadable", why: "unit-unclear" }],
    ["forgot", { kind: "unreadable", why: "text" }],
    ["1,250", { kind: "unreadable", why: "doubtful-number", numbers: [1250, 1.25] }],
    [true, { kind: "unreadable", why: "true-or-false" }],
    [{ error: "#N/A" }, { kind: "error" }],
    [" ", { kind: "not-recorded", why: "empty" }],
  ])("%s is remarked on with what LOOKOVER tells of it", (cell, remark) => {
    expect(plainCell(cell, "g").remark).toEqual(remark);
  });

  it("lost stays lost, empty stays empty", () => {
    expect(plainCell("died – slugs", "g")).toEqual({ cell: { is: "lost" }, remark: { kind: "lost" } });
    expect(plainCell(null, "g").cell).toEqual({ is: "empty" });
  });
});

it("a count takes no unit of weight", () => {
  expect(plainCell("12", "count").cell).toEqual({ is: "number", value: 12 });
  expect(plainCell("12 g", "count").cell).toMatchObject({ is: "refused" });
});
