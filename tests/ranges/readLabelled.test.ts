import { describe, expect, it } from "vitest";
import type { Cell } from "../../src/nouns/cell";
import { isProblem } from "../../src/nouns/problem";
import { type LabelsGiven, readLabelled } from "../../src/ranges/readLabelled";
import { column } from "./column";

const labels = (cells: readonly Cell[], argument = "treatments"): LabelsGiven => ({
  range: column(cells, { argument, corner: { sheet: "Beds", row: 1, column: 2 } }),
  kind: "name",
});

function rowsOf(amounts: readonly Cell[], ...beside: (LabelsGiven | null)[]): unknown[][] {
  const read = readLabelled(column(amounts, { argument: "amounts" }), beside, "refuse");
  if (isProblem(read)) throw new Error(read.problem);
  return read.sample.entries.map((entry, at) => [
    entry.kind === "value" ? entry.value : entry.kind,
    ...read.labels.map((one) => one?.entries[at]),
  ]);
}

describe("readLabelled keeps amounts and labels together", () => {
  it("with empty amounts at the end that have a label", () => {
    expect(rowsOf([1, null, null, null], labels(["Bare", "Bare", "Straw", null]))).toEqual([
      [1, "Bare"],
      ["not-recorded", "Bare"],
      ["not-recorded", "Straw"],
    ]);
  });

  it("with several label ranges, in their order, omitted ones as null", () => {
    const beds = labels([1, 2], "beds");
    expect(rowsOf([5, 6], labels(["Bare", "Straw"]), null, beds)).toEqual([
      [5, "Bare", undefined, "1"],
      [6, "Straw", undefined, "2"],
    ]);
  });

  it("without any labels", () => {
    expect(rowsOf(["grams", 5])).toEqual([[5]]);
  });
});

describe("readLabelled takes the first row for a heading", () => {
  it("when the amounts' first cell is one", () => {
    const read = readLabelled(column(["grams", 5, 6]), [labels(["mulch", "Bare", "Straw"])], "refuse");
    expect(read).toMatchObject({ sample: { unit: "g" }, labels: [{ name: "mulch", names: ["Bare", "Straw"] }] });
    expect(rowsOf(["grams", 5, 6], labels(["mulch", "Bare", "Straw"]))).toEqual([
      [5, "Bare"],
      [6, "Straw"],
    ]);
  });

  it("but not when its label comes up again below: then it is a note about a plant", () => {
    expect(rowsOf(["slugs", 5, 6], labels(["Bare", "Straw", "bare "]))).toEqual([
      ["not-recorded", "Bare"],
      [5, "Straw"],
      [6, "Bare"],
    ]);
  });

  it("and not when the amounts' first cell is a lost plant", () => {
    expect(rowsOf(["lost", 5], labels(["Bare", "Straw"]))).toEqual([
      ["lost", "Bare"],
      [5, "Straw"],
    ]);
  });

  it("and it is one where no label stands beside it", () => {
    expect(rowsOf(["grams", 5, 6], labels([null, "Bare", "Straw"]))).toEqual([
      [5, "Bare"],
      [6, "Straw"],
    ]);
    expect(rowsOf(["grams", 5, 6], labels(["mulch", null, "Straw"]))).toEqual([
      [5, null],
      [6, "Straw"],
    ]);
  });
});

describe("readLabelled refuses", () => {
  it("ranges of different size, naming both", () => {
    expect(readLabelled(column([1, 2, 3]), [labels(["Bare", "Straw"])], "refuse")).toMatchObject({
      problem: "shapes-differ",
      first: { argument: "usual", rows: 3 },
      second: { argument: "treatments", rows: 2 },
    });
  });

  it("amounts and labels the wrong way round, with or without headings", () => {
    const swapped = { problem: "ranges-swapped", first: "usual", second: "treatments" };
    expect(readLabelled(column(["mulch", "Bare", "Straw"]), [labels(["grams", 5, "lost"])], "refuse")).toEqual(swapped);
    expect(readLabelled(column(["Bare", "Straw"]), [labels([5, 6])], "refuse")).toEqual(swapped);
    const [names, numbers] = [column(["mulch", "Bare", null, "Straw"]), labels(["grams", 5, null, 6])];
    expect(readLabelled(names, [numbers], "refuse")).toEqual(swapped);
  });

  it("the second of two label ranges as well", () => {
    expect(readLabelled(column([1, 2]), [labels(["Bare", "Straw"]), labels([1], "beds")], "refuse")).toMatchObject({
      problem: "shapes-differ",
      second: { argument: "beds", rows: 1 },
    });
  });

  it.each<[string, readonly Cell[], readonly Cell[]]>([
    ["a note among amounts", ["slugs", 5], [1, 2]],
    ["no amounts at all", [null, null], [1, 2]],
    ["notes beside names", ["slugs", "rain"], ["Bare", "Straw"]],
    ["notes beside a name and a number", ["slugs", "rain"], ["North", 2]],
    ["notes beside no number", ["slugs", "rain"], ["?", "none"]],
  ])("not %s", (_, amounts, beside) => {
    const read = readLabelled(column(["grams", ...amounts]), [labels(["bed", ...beside], "beds")], "refuse");
    expect(read).toMatchObject({ labels: [{ entries: beside.map(String) }] });
  });

  it("not plants that were all lost, in beds with numbers", () => {
    expect(rowsOf(["lost", "dead"], labels([1, 2], "beds"))).toEqual([
      ["lost", "1"],
      ["lost", "2"],
    ]);
  });

  it("what readSample refuses", () => {
    expect(readLabelled(column([1, -2]), [labels(["Bare", "Straw"])], "refuse")).toMatchObject({
      problem: "negative-amount",
    });
  });
});
