import { expect, it } from "vitest";
import { isTellable } from "../../src/nouns/report";
import { everyTypical } from "../words/everyTypical";

it("comparisons of ways of growing can be told to an audience, plans and clean-ups of a sheet cannot", () => {
  const kinds = Object.values(everyTypical).map((finding) => [finding.finding, isTellable(finding)] as const);
  const told = new Set(kinds.flatMap(([kind, can]) => (can ? [kind] : [])));
  expect([...told].sort()).toEqual(
    "many-treatments many-trials totals-only two-treatments up-down worth-it".split(" "),
  );
  expect(new Set(kinds.map(([kind]) => kind)).size).toBe(17);
});
