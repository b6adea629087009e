import { expect, it } from "vitest";
import { seasonTotal } from "../../src/questions/seasonTotal";
import { codes, sample } from "./range";

const unknown = { absent: "total-only" };

it.each(["leave out", "count as zero"] as const)(
  "shares the total among all set out, whatever the rule: %s",
  (rule) => {
    const planted = { plants: 30, repeated: false };
    const found = seasonTotal({ sample: sample("amounts", ["Netting (kg)", 655]), planted, rule }, 655);
    expect(found).toMatchObject({
      name: "Netting",
      unit: "kg",
      rule,
      fromTotal: true,
      setOut: 30,
      counted: 30,
      total: 655,
    });
    expect(found.perPlant).toBe(655 / 30);
    expect(found.perPlantSetOut).toBe(655 / 30);
    expect([found.lost, found.notRecorded, found.perSurvivingPlant]).toEqual([unknown, unknown, unknown]);
    expect(codes(found.cautions())).toEqual(["C12"]);
  },
);

it("says when a plant's label is there twice", () => {
  const planted = { plants: 2, repeated: true };
  const found = seasonTotal({ sample: sample("amounts", [9]), planted, rule: "leave out" }, 9);
  expect(codes(found.cautions())).toEqual(["C02", "C12"]);
});

it("says when the total was read from behind a mark", () => {
  const planted = { plants: 30, repeated: false };
  const found = seasonTotal({ sample: sample("amounts", ["~655"]), planted, rule: "leave out" }, 655);
  expect(codes(found.cautions())).toEqual(["C14", "C12"]);
});
