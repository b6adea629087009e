import { expect, it } from "vitest";
import type { Cell } from "../../src/nouns/cell";
import type { CellRange } from "../../src/nouns/cellRange";
import { isProblem } from "../../src/nouns/problem";
import { type PlantsSetOut, readPlantsEachNamed } from "../../src/questions/readPlantsEachNamed";

function read(cells: readonly (readonly Cell[])[]) {
  const range: CellRange = {
    argument: "plants_each",
    cells,
    corner: { sheet: "Trial", row: 2, column: 2 },
    zerosVerified: true,
  };
  return readPlantsEachNamed(range);
}

function taken(answer: ReturnType<typeof read>): PlantsSetOut {
  if (answer === null || isProblem(answer)) throw new Error("no numbers of plants");
  return answer;
}

it("is one number for all, or null when left out or empty", () => {
  const all = taken(read([[6]]));
  expect([all.of("any"), all.names]).toEqual([6, []]);
  expect(readPlantsEachNamed(null)).toBeNull();
  expect(read([[null]])).toBeNull();
});

it("is a number for each name, below headings or not, whatever the letter case", () => {
  for (const heading of [[], [["Mulch", "Plants"]], [[null, "Plants"]]]) {
    const named = taken(read([...heading, ["Straw", 8], [null, null], ["bare soil", "7"]]));
    expect(named.names).toEqual(["Straw", "bare soil"]);
    expect([named.of("straw "), named.of("Bare  soil"), named.of("Chips")]).toEqual([8, 7, null]);
  }
});

it("two empty columns name nothing", () => {
  const nothing = taken(read([[null, null]]));
  expect([nothing.names, nothing.of("Straw")]).toEqual([[], null]);
});

it("several cells in one column are no number for all", () => {
  expect(read([[6], [7]])).toMatchObject({ problem: "one-cell-wanted", argument: "plants_each", rows: 2, columns: 1 });
});

it("one number for all must be a whole one above 0", () => {
  expect(read([[0]])).toMatchObject({ problem: "not-whole", low: 1 });
  expect(read([["some"]])).toMatchObject({ problem: "not-a-number", given: "some" });
});

it("a number without its name is named where it stands, a typed one below the first row too", () => {
  const second = ["Straw", 8] as const;
  const problem = "number-without-name";
  expect(read([[null, 6], second])).toMatchObject({ problem, place: { cell: "C2" }, given: "6" });
  expect(read([second, ["Bare", 7], [null, "6"]])).toMatchObject({ problem, place: { cell: "C4" }, given: "6" });
});

it.each([
  [null, { problem: "plants-each-lacks", name: "Bare" }],
  [0, { problem: "not-whole", given: 0 }],
  [2.5, { problem: "not-whole", given: 2.5 }],
])("a first row with %j for its number is no heading", (number, problem) => {
  expect(
    read([
      ["Bare", number],
      ["Straw", 8],
    ]),
  ).toMatchObject(problem);
});

it.each([
  [
    "a name without its number",
    [
      ["Straw", 8],
      ["Bare", null],
    ],
    { problem: "plants-each-lacks", name: "Bare" },
  ],
  [
    "a number without its name",
    [
      ["Straw", 8],
      [null, 7],
    ],
    {
      problem: "number-without-name",
      place: { argument: "plants_each", row: 2, column: 2, cell: "C3" },
      given: "7",
    },
  ],
  [
    "a number that is none",
    [
      ["Straw", 8],
      ["Bare", "some"],
    ],
    { problem: "not-a-number", given: "some" },
  ],
  [
    "one name twice",
    [
      ["Straw", 8],
      ["straw", 7],
    ],
    { problem: "name-twice", name: "straw" },
  ],
  [
    "an error for a name",
    [
      ["Straw", 8],
      [{ error: "#N/A" }, 7],
    ],
    { problem: "error-for-name", given: "#N/A" },
  ],
  ["three columns", [["Straw", 8, 9]], { problem: "too-many-columns", columns: 3, most: 2 }],
] as const)("refuses %s", (_, cells, problem) => {
  expect(read(cells)).toMatchObject(problem);
});
