// @vitest-environment jsdom
import { expect, it } from "vitest";
import { theDesk } from "../../../../src/answers/theDesk";
import { shapeForm } from "../../../../src/pane/check/clean/shapeForm";
import { lookedOver } from "./looked";

const looked = {
  ...lookedOver([
    ["plant", "grams"],
    ["P1", 310],
    ["P2", 290],
  ]),
  reference: "",
  formula: "",
};

it.each([
  ["2", 2],
  ["2.5", 2],
  ["-1", 1],
  ["", 1],
  ["99", 3],
])("headings said to stand in row “%s” stand in row %d of the cells", (typed, row) => {
  const form = shapeForm(looked, theDesk, () => {});
  const heading = form.root.querySelector<HTMLInputElement>("input[type=number]");
  if (heading === null) throw new Error("no field");
  heading.value = typed;
  expect(form.rules().shape.headingRow).toBe(row);
});
