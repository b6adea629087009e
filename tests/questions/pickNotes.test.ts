import { expect, it } from "vitest";
import type { Cell } from "../../src/nouns/cell";
import { tallyPicks } from "../../src/questions/tallyPicks";
import { found, given } from "./range";

type Row = readonly [plant: Cell, date: Cell, grams: Cell];

/** The plants of a log whose columns each start in B2, with the notes that single rows gave them. */
function notesOf(rows: readonly Row[], more: Parameters<typeof given>[0] = {}) {
  const column = (at: 0 | 1 | 2) => rows.map((row) => row[at]);
  const call = given({ plants: column(0), dates: column(1), amounts: column(2), ...more });
  return found(tallyPicks(call)).plants.map(({ plant, notes }) => [plant, notes]);
}

const at = (argument: string, cell: string) => ({ argument, cell });

// the middle pick is 38 g: 3600 g is more than eight times as much
it("each row is told of by what is to be looked at, where it stands, beside its plant", () => {
  const rows: readonly Row[] = [
    ["B1", "2023-07-01", 40],
    ["B2", "2023-07-01", 30],
    ["B1", "2023-07-01", 40],
    ["B2", "2023-07-08", null],
    ["B1", "soon", 50],
    ["B2", "2023-07-15", "36?"],
    ["B1", "2023-07-15", 3600],
    ["B2", "w/c 17 July", 33],
    ["B3", "2023-07-15", 35],
  ];
  expect(notesOf(rows)).toMatchObject([
    [
      "B1",
      [
        { note: "entered-twice", place: at("plants", "B4"), like: at("plants", "B2") },
        { note: "far-above", place: at("amounts", "B8"), amount: 3600 },
        { note: "date-unclear", place: at("dates", "B6"), text: "soon" },
      ],
    ],
    [
      "B2",
      [
        { note: "weight-missing", why: "empty", place: at("amounts", "B5"), text: "" },
        { note: "date-unclear", place: at("dates", "B9"), text: "w/c 17 July" },
        { note: "read-as", place: at("amounts", "B7"), text: "36?", amount: 36 },
      ],
    ],
    ["B3", []],
  ]);
});

it("rows without a label are told of beside no plant, not beside one that was never picked", () => {
  const rows: readonly Row[] = [
    ["B1", "2023-07-01", 40],
    [null, "soon", "30?"],
    [null, "2023-07-01", 30],
    [null, "2023-07-01", 30],
    [null, "2023-07-08", 3600],
    [null, "2023-07-08", "forgot"],
  ];
  expect(notesOf(rows, { all_plants: ["B1", "B2"] })).toEqual([
    ["B1", []],
    ["B2", []],
  ]);
});
