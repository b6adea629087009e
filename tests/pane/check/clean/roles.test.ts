import { expect, it } from "vitest";
import { rolesOf } from "../../../../src/pane/check/clean/roles";

const columns = (...headings: readonly string[]) => headings.map((heading) => ({ heading, kind: "label" as const }));

it.each([
  [
    ["plant", "mulch", "bed"],
    [0, 1, 2],
  ],
  [
    ["Beds", "Plants", "Treatments"],
    [1, 2, 0],
  ],
  [
    ["ID", "Variety", "Block"],
    [0, 1, 2],
  ],
  [
    ["Row", "Label", "Bed"],
    [1, -1, 2],
  ],
  [
    ["Plot", "Group", "Tag"],
    [2, 1, 0],
  ],
  [
    ["Bedding", "Planted by", "Notes"],
    [-1, -1, -1],
  ],
  [[], [-1, -1, -1]],
] as const)("%j: plants, treatments and beds stand in columns %j", (headings, [plants, treatments, beds]) => {
  expect(rolesOf(columns(...headings))).toEqual({ plants, treatments, beds });
});

it("a column that holds amounts or notes names nothing", () => {
  expect(
    rolesOf([
      { heading: "Plants", kind: "amount" },
      { heading: "Bed", kind: null },
    ]),
  ).toEqual({
    plants: -1,
    treatments: -1,
    beds: -1,
  });
});
