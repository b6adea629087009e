import { expect, it } from "vitest";
import { totalLabels } from "../../src/ranges/totalLabels";

const totals = (rows: number, ...uses: readonly (readonly [string, number])[]) => [...totalLabels(new Map(uses), rows)];

it("labels that say total, average or week name no plant", () => {
  expect(totals(30, ["Straw", 10], ["Bare", 10], ["Week total", 2], ["AVERAGE", 1])).toEqual(["Week total", "AVERAGE"]);
});

it("a label that says more and stands in a quarter of the rows is a name", () => {
  expect(totals(40, ["Weekly feed", 10], ["Bare", 30])).toEqual([]);
  expect(totals(41, ["Weekly feed", 10], ["Bare", 31])).toEqual(["Weekly feed"]);
  expect(totals(2, ["Weekly feed", 1], ["Bare", 1])).toEqual(["Weekly feed"]);
});

it("a total below every two treatments stays a total", () => {
  expect(totals(30, ["Straw", 10], ["Bare", 10], ["Grand total", 10])).toEqual(["Grand total"]);
});

it.each([
  ["Subtotal", "Subtotals", "Sub-total", "Sub-totals", "Total", "Totals", "Sum", "Sums", "Average", "Averages"],
  ["Avg", "Mean", "Means", "Week", "Weeks", "Weekly total", "Week 2", "Average for the week", "Total of week 3"],
])("words for totals alone are no name, however often they stand there: %s, %s …", (...labels) => {
  for (const label of labels) expect(totals(30, ["Straw", 20], [label, 10])).toEqual([label]);
});

it("no labels, no totals", () => {
  expect(totals(0)).toEqual([]);
});
