import { expect, it } from "vitest";
import { columnBlock, lineBlock, oneCell, oneColumn, plainBlock, stacked } from "../../src/cells/blocks";

const lines = [{ label: "Change", format: "percent", value: () => Number.NaN }] as const;
const columns = { header: ["Treatment", "Share"], rows: [["Straw", 0.5]], main: 1 } as const;

it("outputs and formats have the same shape, whatever the block", () => {
  const table = stacked(columnBlock({ ...columns, formats: ["text", "percent"] }), lineBlock(lines, 2));
  const blocks = [table, oneCell(1, "count"), plainBlock([["a", 1]]), oneColumn([1, 2], "amount"), lineBlock(lines, 4)];
  for (const { outputs, formats } of blocks) {
    expect(formats.map(({ length }) => length)).toEqual(outputs.map(({ length }) => length));
  }
});

it("columns without formats are shown as they come", () => {
  expect(columnBlock(columns).formats.flat()).toEqual(["text", "text", "text", "text"]);
});

it("what is beyond numbers leaves as words", () => {
  expect(lineBlock(lines, 3).outputs).toEqual([["Change", "too large to work out", ""]]);
});
