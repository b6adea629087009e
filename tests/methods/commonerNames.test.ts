import { expect, it } from "vitest";
import { commonerNames } from "../../src/methods/commonerNames";

it("the commonest name, of several the first; names that are missing do not count", () => {
  const owners = Int32Array.of(0, 0, 1, 1, 1, 2, 3, -1, 3);
  const names = Int32Array.of(4, 5, 4, 5, 5, -1, 6, 4, -1);
  const found = commonerNames(owners, names, 5);
  expect([...found.names]).toEqual([4, 5, -1, 6, -1]);
  expect([...found.several]).toEqual([
    [
      0,
      [
        { name: 4, rows: 1 },
        { name: 5, rows: 1 },
      ],
    ],
    [
      1,
      [
        { name: 5, rows: 2 },
        { name: 4, rows: 1 },
      ],
    ],
  ]);
});

it("counts every row of a name, also of the first name of all", () => {
  const owners = Int32Array.of(0, 0, 0, 1, 1, 1, 1);
  const names = Int32Array.of(0, 1, 0, 0, 2, 2, 0);
  const { names: found, several } = commonerNames(owners, names, 2);
  expect([...found]).toEqual([0, 0]);
  expect(several.get(0)).toEqual([
    { name: 0, rows: 2 },
    { name: 1, rows: 1 },
  ]);
  expect(several.get(1)).toEqual([
    { name: 0, rows: 2 },
    { name: 2, rows: 2 },
  ]);
});
