import { describe, expect, it } from "vitest";
import { readBlock } from "../../src/ranges/readBlock";
import { block, column } from "./column";

describe("readBlock", () => {
  it("reads each column by its kind, below the heading row, without notes and empty rows at the end", () => {
    const cells = [
      ["date", "mulch", "grams", "note", null],
      [45_112, "Straw", 300, null, null],
      [45_113, "Bare", null, "slugs", null],
      [45_113, "Straw", 290, null, null],
      [null, null, null, null, null],
    ];
    const read = readBlock(block(cells), null);
    expect(read).toMatchObject({ from: 1, rows: 3 });
    expect(read.columns.map(({ kind, at, heading }) => [kind, at, heading])).toEqual([
      ["date", 0, "date"],
      ["label", 1, "mulch"],
      ["amount", 2, "grams"],
    ]);
    expect(read.columns[2]?.cells).toEqual([300, null, 290]);
  });

  it("finds no heading row in numbers, nor where the first text comes again", () => {
    expect(readBlock(column([300, 310]), null).from).toBe(0);
    expect(readBlock(column(["slugs", 310, "slugs", 3]), null).from).toBe(0);
    expect(readBlock(column([300]), null).from).toBe(0);
  });

  it("finds a heading row above amounts or dates, with cells among them that hold nothing", () => {
    expect(readBlock(column(["grams", 300, null, 310]), null)).toMatchObject({
      from: 1,
      columns: [{ heading: "grams" }],
    });
    expect(readBlock(column(["When", 45_112, null, 45_113]), null)).toMatchObject({
      from: 1,
      columns: [{ kind: "date" }],
    });
    expect(readBlock(column(["Straw", 300]), "amount").from).toBe(1);
  });

  it("finds no heading row where a number stands in it, nor above names where a cell of it is empty", () => {
    const [bare, hay] = [
      ["Bare", 300],
      ["Hay", 290],
    ];
    expect(readBlock(block([["Treatment", 310], bare, hay]), null)).toMatchObject({
      from: 0,
      columns: [{ heading: null }, { heading: null }],
    });
    expect(readBlock(block([["Straw", null], bare, hay]), null).from).toBe(0);
  });

  it("names alone have a heading only when it says so", () => {
    expect(readBlock(column(["Treatment", "Straw", "Bare", "Straw"]), null).from).toBe(1);
    expect(readBlock(column([" Treatments", "Straw", "Bare", "Straw"]), null).from).toBe(1);
    expect(readBlock(column(["Hay", "Straw", "Bare", "Straw"]), null).from).toBe(0);
    expect(readBlock(column(["No mulch", "Straw", "Bare", "Straw"]), null).from).toBe(0);
    expect(readBlock(column(["Treatment"]), "label").from).toBe(0);
  });

  it("takes the kind it is told", () => {
    expect(readBlock(column([1, 2, 3]), "label").columns[0]?.kind).toBe("label");
  });

  it("an empty block has no columns and no rows", () => {
    expect(readBlock(column([null, " "]), null)).toEqual({ from: 0, rows: 0, columns: [] });
  });
});
