import { expect, it } from "vitest";
import { readTotal } from "../../src/questions/readTotal";
import { range } from "./range";

const read = (total: Parameters<typeof range>[1], plants: Parameters<typeof range>[1]) =>
  readTotal({
    total: range("usual_total", total),
    totalName: "usual_total",
    plants: range("usual_plants", plants),
    plantsName: "usual_plants",
  });

it("reads a total, with or without a heading and a unit, and its plants", () => {
  expect(read(412, 30)).toMatchObject({ total: 412, plants: 30, sample: { name: null, unit: null } });
  expect(read(["Coarse net (kg)", 14.5], 30)).toMatchObject({
    total: 14.5,
    sample: { name: "Coarse net", unit: "kg" },
  });
  expect(read("14.5 kg", 30)).toMatchObject({ total: 14.5, sample: { unit: "kg" } });
  expect(read("none", 30)).toMatchObject({ total: 0 });
});

it("a cell without a number is no total", () => {
  for (const text of ["forgot", "lost", ["Coarse net"]]) expect(read(text, 30)).toMatchObject({ total: null });
});

it("refuses several numbers, a total below zero, and plants that cannot be counted", () => {
  expect(read([200, 212], 30)).toMatchObject({ problem: "one-cell-wanted", argument: "usual_total", rows: 2 });
  expect(read(-4, 30)).toMatchObject({ problem: "negative-amount" });
  for (const plants of [0, 2.5, -3]) expect(read(412, plants)).toMatchObject({ problem: "not-whole", low: 1 });
  expect(read(412, "thirty")).toMatchObject({ problem: "not-a-number", argument: "usual_plants" });
  expect(read(412, null)).toMatchObject({ problem: "missing-argument", argument: "usual_plants" });
});
