import { describe, expect, it } from "vitest";
import { columnsOf, joint, trialOf } from "./trialOf";

describe("where nothing can be tested there are averages, and why there is no more", () => {
  // averages 4 and 5: one more, 25 % more
  const averages = { difference: 1, change: 0.25, rangeVerdict: null };
  const without = (why: string) => {
    const none = { absent: why };
    return {
      ...averages,
      pValue: none,
      changeRange: { low: none, high: none },
      differenceRange: { low: none, high: none },
    };
  };

  it.each([
    ["one degree of freedom", [[4, 4], [5]], "too-few-plants", "few"],
    [
      "no plant strays",
      [
        [4, 4],
        [5, 5],
      ],
      "all-equal",
      "none",
    ],
  ] as const)("%s", (_, groups, why, verdict) => {
    for (const how of ["against usual", "all pairs", "own unevenness"] as const) {
      const comparison = joint(trialOf(columnsOf(groups)), { how, usual: 0 });
      expect(comparison.untested).toEqual({ absent: why });
      expect(comparison.againstUsual(1)).toEqual({ ...without(why), verdict });
      expect([comparison.isBelow(1, 0.05), comparison.test()]).toEqual([null, null]);
    }
  });

  it.each([
    ["one plant of the new", [[3, 4, 5], [5], [4, 5, 6]], "one-plant", "few"],
    ["one plant of the usual", [[4], [4, 5, 6], [4, 5, 6]], "one-plant", "few"],
    [
      "two plants each, all alike",
      [
        [4, 4],
        [5, 5],
        [4, 5, 6],
      ],
      "all-equal",
      "none",
    ],
  ] as const)("own unevenness, %s, though the third treatment varies", (_, groups, why, verdict) => {
    const comparison = joint(trialOf(columnsOf(groups)), { how: "own unevenness", usual: 0 });
    expect(comparison.untested).toBeNull();
    expect(comparison.againstUsual(1)).toEqual({ ...without(why), verdict });
    expect(comparison.isBelow(1, 0.05)).toBeNull();
  });

  it("plants that all bore nothing are alike", () => {
    expect(
      joint(
        trialOf(
          columnsOf([
            [0, 0, 0],
            [0, 0, 0],
          ]),
        ),
        { how: "all pairs", usual: null },
      ).untested,
    ).toEqual({
      absent: "all-equal",
    });
  });

  it.each([1, 1e6])("plants that stray by no more than a computer's rounding are alike, %d times over", (size) => {
    // each amount is a tenth of its bed's number and seven tenths more under the second treatment
    const rows = [1, 2, 3, 4, 5].flatMap((bed) =>
      [0, 1].map((at) => ({ bed: bed - 1, at, value: bed / 10 + 0.7 * at })),
    );
    const columns = {
      value: rows.map(({ value }) => size * value),
      treatment: rows.map(({ at }) => at),
      bed: rows.map(({ bed }) => bed),
    };
    expect(joint(trialOf(columns), { how: "against usual", usual: 0 }).untested).toEqual({ absent: "all-equal" });
  });

  it("plants that stray by a millionth are not", () => {
    const groups = trialOf(
      columnsOf([
        [1, 1.000001, 1],
        [1, 1, 1.000002],
      ]),
    );
    expect(joint(groups, { how: "against usual", usual: 0 }).untested).toBeNull();
  });
});

it("a usual average of 0 gives a difference without a change, and no verdict", () => {
  const groups = [
    [-1, 1, -2, 2],
    [3, 4, 5, 6],
  ];
  const found = joint(trialOf(columnsOf(groups)), { how: "against usual", usual: 0 }).againstUsual(1);
  expect(found).toMatchObject({ difference: 4.5, change: { absent: "usual-not-above-zero" } });
  expect(found).toMatchObject({ rangeVerdict: null, verdict: "none" });
});
