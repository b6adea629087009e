import { beforeEach, expect, it } from "vitest";
import { theDesk } from "../../../src/answers/theDesk";
import { findCalls } from "../../../src/formula/findCalls";
import { callBlocks } from "../../../src/pane/check/callBlocks";
import { type MemorySheet, memorySheet } from "../memorySheet";

let sheet: MemorySheet;

beforeEach(() => {
  sheet = memorySheet(theDesk, { grams: "D2:D9" });
  sheet.fill("A1", [
    ["bed", "plant", "mulch", "grams"],
    ...Array.from({ length: 8 }, (_, at) => [at, at, "Straw", 200]),
  ]);
});

async function blocks(formula: string): Promise<readonly (readonly [string, string | null])[]> {
  const [call] = findCalls(formula);
  if (call === undefined) throw new Error("no call");
  const found = await callBlocks(call, "Mulch", { sheet, desk: theDesk });
  return found.map(({ cells: { corner, cells }, kind }) => [
    `${corner.column},${corner.row}: ${cells[0]?.length} × ${cells.length}`,
    kind,
  ]);
}

it("columns of one table are looked at together, with those between them", async () => {
  expect(await blocks("=FAIRBED.COMPAREMANY(D1:D9,C1:C9,,A1:A9)")).toEqual([["1,1: 4 × 9", null]]);
});

it("ranges that stand apart, and those that are no table, are looked at one by one", async () => {
  expect(await blocks("=FAIRBED.COMPARETWO(D2:D5,D6:D9)")).toEqual([
    ["4,2: 1 × 4", "per plant"],
    ["4,6: 1 × 4", "per plant"],
  ]);
  expect(await blocks("=FAIRBED.TALLYPICKS(B2:B9,,D2:D9,,,,B2:B5)")).toEqual([
    ["2,2: 3 × 8", null],
    ["2,2: 1 × 4", null],
  ]);
});

it("options in cells are not looked at, unless the call reads nothing else", async () => {
  expect(await blocks("=FAIRBED.COMPARETWO(D2:D5,D6:D9,,,E1)")).toHaveLength(2);
  expect(await blocks("=FAIRBED.UPDOWN(D2,D3)")).toEqual([
    ["4,2: 1 × 1", null],
    ["4,3: 1 × 1", null],
  ]);
});

it("names are followed; what the sheet does not know, or only it can work out, is passed over", async () => {
  expect(await blocks("=FAIRBED.PERPLANT(grams)")).toEqual([["4,2: 1 × 8", "per plant"]]);
  expect(await blocks("=FAIRBED.COMPARETWO(nowhere,D6:D9*2)")).toEqual([]);
});
