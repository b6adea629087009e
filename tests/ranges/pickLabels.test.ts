import { expect, it } from "vitest";
import { readPickLabels } from "../../src/ranges/pickLabels";

it("numbers labels in order of appearance; those that mean the same have one number and the first's spelling", () => {
  const cells = [null, "B1 - 1", "b1-1", "b1-1", { error: "#N/A" }, "B2", null, "B1 -1", 7];
  const { names, ids } = readPickLabels(
    cells.map((cell) => [cell]),
    "plant",
  );
  expect(names).toEqual(["B1 - 1", "B2", "7"]);
  expect([...ids]).toEqual([-1, 0, 0, 0, -1, 1, -1, 0, 2]);
});

it("spaces round a mark tell names apart, letter case and spaces round them do not", () => {
  const { names, ids } = readPickLabels([["Hay/straw"], [" HAY/straw "], ["hay / straw"]], "name");
  expect(names).toEqual(["Hay/straw", "hay / straw"]);
  expect([...ids]).toEqual([0, 0, 1]);
});
