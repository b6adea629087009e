import { expect, it } from "vitest";
import { reportOf } from "../../../src/words/report/reportOf";
import { group, strawFinding } from "../../pane/strawFinding";
import { asReport } from "./asReport";
import { marlpitNotes, reportFrom, telling, typicalTellable } from "./tellable";

const inBeds = "Marlpit Corner, straw against bare soil, in beds";
const four = "COMPAREMANY four mulches in beds against bare soil";
const label = "Follow the product label: which crop, how much, how many days before harvest.";

it.each([
  ["the-demo-trial", [inBeds], { notes: marlpitNotes, drawNumber: 1431 }],
  ["the-demo-trial-not-settled", ["Marlpit Corner, straw against bare soil, separate plants"], { notes: marlpitNotes }],
  ["four-mulches", [four], { notes: marlpitNotes, drawNumber: 1431 }],
  ["two-results-with-a-safety-line", [inBeds, four], { notes: marlpitNotes, safety: [label] }],
  ["no-notes", ["two plants each"], {}],
] as const)("%s: the approved report and texts", async (name, titles, more) => {
  await expect(asReport(reportFrom(titles, more))).toMatchFileSnapshot(`approved/${name}.txt`);
});

it("a title and a question of the grower's own take the place of ours", () => {
  const report = reportFrom([inBeds], { title: "Straw!", question: "Is straw worth it?" });
  expect([report.title, report.question]).toEqual(["Straw!", "Is straw worth it?"]);
});

it("a caution that two results share is told once, place and season last", () => {
  const { couldFool } = reportFrom([inBeds, inBeds]);
  expect(new Set(couldFool).size).toBe(couldFool.length);
  expect(couldFool.at(-1)).toMatch(/^One place, one season\./);
});

it("without a result there is nothing to tell", () => {
  const report = reportOf(telling([]));
  expect([report.title, report.question, report.results, report.couldFool]).toEqual(["", "", [], []]);
});

it("every row of every table is as wide as its columns, and every bar has a height", () => {
  for (const [title, finding] of typicalTellable) {
    for (const { table, bars } of reportOf(telling([finding])).results) {
      expect(new Set(table.rows.map(({ length }) => length)), title).toEqual(new Set([table.columns.length]));
      expect(bars.map(({ average }) => Number.isFinite(average))).not.toContain(false);
    }
  }
});

it("a full stop in a treatment's name cuts no sentence in two", () => {
  const named = strawFinding({ usual: group("usual", "Mr. Gray", [2, 3, 4]), tried: group("new", "No. 2", [3, 5, 4]) });
  const [result] = reportOf(telling([named])).results;
  const told = [...(result?.finding ?? []), ...(result?.compared ?? []), ...(result?.say ?? [])];
  expect(told.length).toBeGreaterThan(3);
  for (const sentence of told) expect(sentence, sentence).not.toMatch(/(?:Mr|No)\.$|^(?:Gray|2)\b/);
});
