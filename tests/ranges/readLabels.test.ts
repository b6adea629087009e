import { expect, it } from "vitest";
import { readLabels } from "../../src/ranges/readLabels";
import { column } from "./column";

it("readLabels spells like labels as the first of them", () => {
  const labels = readLabels(column(["Bare soil", "straw", " bare  SOIL", "Straw "]), "name");
  expect(labels.entries).toEqual(["Bare soil", "straw", "Bare soil", "straw"]);
  expect(labels.names).toEqual(["Bare soil", "straw"]);
});

it("readLabels matches plants across spaces round their marks", () => {
  expect(readLabels(column(["B1-1", "B1 - 1", "B1-2"]), "plant").names).toEqual(["B1-1", "B1-2"]);
});

it("readLabels takes numbers for labels, and empty cells and errors for none", () => {
  const labels = readLabels(column([1, null, "1", " ", { error: "#N/A" }, true]), "name");
  expect(labels.entries).toEqual(["1", null, "1", null, null, "TRUE"]);
});

it("readLabels takes off a heading when told so, and reads as far as told", () => {
  const labels = readLabels(column(["mulch", "Bare", null, null]), "name", { heading: true, length: 3 });
  expect(labels).toEqual({ name: "mulch", names: ["Bare"], entries: ["Bare", null] });
});

it("readLabels alone takes the first cell for a label and drops empty cells at the end", () => {
  expect(readLabels(column(["Bare", "Straw", null]), "name")).toMatchObject({ name: null, entries: { length: 2 } });
});
