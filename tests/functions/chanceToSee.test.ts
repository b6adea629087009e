import { expect, it } from "vitest";
import { near } from "../near";
import { cell, labels, matrix, number } from "./call";

it("shows the chance alone, and two labels in METHODS' order", () => {
  const table = matrix("CHANCETOSEE", 0.5, 6, 0.3, "table");
  expect(labels(table)).toEqual(["Chance to see it", "Chance it is enough to matter"]);
  expect(cell("CHANCETOSEE", 0.5, 6, 0.3)).toBe(table[0]?.[1]);
  for (const [label, value] of table) expect(cell("CHANCETOSEE", 0.5, 6, 0.3, label)).toBe(value);
});

it.each([2, 3, 5, 20])(
  "no change among %d treatments: the false alarms that one comparison is allowed",
  (treatments) => {
    near("chance", number("CHANCETOSEE", 0, 8, 0.3, null, treatments), 0.05 / (treatments - 1), { relative: 1e-14 });
    near("chance", number("CHANCETOSEE", "0%", 8, 0.3, null, treatments, 4), 0.05 / (treatments - 1), {
      relative: 1e-14,
    });
  },
);

it("enough to matter: a true change of just the worthwhile one is found so in half the false alarms", () => {
  near("more", number("CHANCETOSEE", 0.25, 8, 0.3, "Chance it is enough to matter", 2, null, 0.25), 0.025);
  near("less", number("CHANCETOSEE", -0.25, 8, 0.3, "Chance it is enough to matter", 2, null, 0.25), 0.025);
});

it("worthwhile is 10 % when left out, and its sign says only what is wanted", () => {
  const enough = (worthwhile: unknown) =>
    cell("CHANCETOSEE", 0.5, 6, 0.3, "Chance it is enough to matter", 2, null, worthwhile);
  expect(enough(null)).toBe(enough(0.1));
  expect(enough(-0.1)).toBe(enough("10%"));
  expect(enough(0.2)).toBeLessThan(Number(enough(0.1)));
});
