import { expect, it } from "vitest";
import { lookAtNames } from "../../src/ranges/lookAtNames";

const kinds = (...cells: Parameters<typeof lookAtNames>[0]) =>
  lookAtNames(cells, new Set()).noted.map(({ row, remark }) => [row, remark.kind]);

it("the rarer of two spellings and of two like names is noted, with the other one", () => {
  const cells = ["Bare soil", "Bare soil", "bare  SOIL", "bare", "Straw", "Straw", "Straw", "B1 - 1", "B1-1", "B1-1"];
  const { keys, noted } = lookAtNames(cells, new Set());
  expect(keys.slice(0, 4)).toEqual(["bare soil", "bare soil", "bare soil", "bare"]);
  expect(noted).toEqual([
    { row: 2, remark: { kind: "names-alike", like: "Bare soil", uses: 1, likeUses: 2, same: true } },
    { row: 3, remark: { kind: "names-alike", like: "Bare soil", uses: 1, likeUses: 2, same: false } },
    { row: 3, remark: { kind: "name-once" } },
    { row: 7, remark: { kind: "names-alike", like: "B1-1", uses: 1, likeUses: 2, same: true } },
  ]);
});

it("the name used less is noted wherever it stands, with the other without spaces round it", () => {
  expect(kinds("Strow", "Straw", "Straw")).toEqual([[0, "names-alike"]]);
  expect(kinds("Strow", "Straw")).toEqual([[1, "names-alike"]]);
  expect(lookAtNames([" Straw ", " Straw ", "straw"], new Set()).noted).toEqual([
    { row: 2, remark: { kind: "names-alike", like: "Straw", uses: 1, likeUses: 2, same: true } },
  ]);
});

it("names used once are noted only where names come up again", () => {
  expect(kinds("Straw", "Straw", "Straw", "Bare", "Bare", "Hay")).toEqual([[5, "name-once"]]);
  expect(kinds("B1", "B2", "B3", "B4", "B4")).toEqual([]);
  // as many used once as not
  expect(kinds("Straw", "Straw", "Straw", "Bare")).toEqual([]);
  expect(kinds("Straw", "Straw", "Straw", "Bare", "Bare", "Bare", "Hay", "Wool")).toEqual([]);
  // less than twice each
  expect(kinds("Straw", "Straw", "Bare", "Bare", "Hay")).toEqual([]);
});

it("empty cells, errors and dates that Excel made of names are noted, skipped rows are not", () => {
  expect(kinds("A", null, { error: "#N/A" }, 45_112, "A")).toEqual([
    [1, "not-recorded"],
    [2, "error"],
    [3, "excel-date"],
  ]);
  expect(lookAtNames([null], new Set()).noted).toEqual([{ row: 0, remark: { kind: "not-recorded", why: "empty" } }]);
  expect(lookAtNames(["A", null, "A"], new Set([1])).noted).toEqual([]);
});

it("numbers are names too, and so is a text in the digits of a date", () => {
  expect(lookAtNames([12, 12, "45112", "45112"], new Set())).toEqual({
    keys: ["12", "12", "45112", "45112"],
    noted: [],
  });
});

it("up to three hundred names are compared with each other", () => {
  const names = Array.from({ length: 300 }, (_, at) => `Bed ${at}`);
  expect(kinds(...names.slice(2), "Straw", "Strow")).toEqual([[299, "names-alike"]]);
  expect(kinds(...names.slice(1), "Straw", "Strow")).toEqual([]);
});
