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
