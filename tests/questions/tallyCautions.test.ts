import { describe, expect, it } from "vitest";
import type { Cell } from "../../src/nouns/cell";
import { tallyPicks } from "../../src/questions/tallyPicks";
import { block } from "../ranges/column";
import { codes, found, given } from "./range";

function cautions(columns: Readonly<Record<string, readonly Cell[]>>, list: readonly (readonly Cell[])[] = []) {
  const listed = list.length === 0 ? {} : { all_plants: block(list, { argument: "all_plants" }) };
  return found(tallyPicks({ ...given(columns), ...listed })).cautions();
}

/** One row a plant, those that were lost first. */
const treatment = (name: string, lost: number, setOut: number) =>
  Array.from({ length: setOut }, (_, at) => [`${name} ${at}`, at < lost ? "lost" : 4, name] as const);

const lossOf = (...rows: readonly (readonly [plant: string, amount: Cell, name: string])[]) => {
  const columns = [0, 1, 2].map((at) => rows.map((row) => row[at] ?? null));
  const [plants = [], amounts = [], treatments = []] = columns;
  return cautions({ plants, amounts, treatments });
};

describe("lost plants", () => {
  it("none, none told, with treatments and without", () => {
    const log = { plants: ["B1", "B2"], amounts: [4, 5] };
    expect(codes(cautions(log))).toEqual(["C12"]);
    expect(codes(cautions({ ...log, treatments: ["Straw", "Bare"] }))).toEqual(["C12"]);
  });

  it("without treatments they are counted among all plants, those picked later too", () => {
    const log = {
      plants: ["B1", "B2", "B2", "B3", "B4", "B4"],
      dates: ["2023-07-01", "2023-07-01", "2023-07-02", "2023-07-01", "2023-07-01", "2023-07-02"],
      amounts: [4, "lost", 5, 4, 4, "dead"],
    };
    expect(cautions(log)[0]).toMatchObject({
      caution: "C03",
      losses: [{ name: "plants", role: "usual", lost: 2, setOut: 4 }],
    });
  });

  it("with treatments, each that lost one is named", () => {
    const [loss] = lossOf(...treatment("Straw", 1, 6), ...treatment("Bare", 0, 5), ...treatment("Fleece", 2, 8));
    expect(loss).toMatchObject({
      losses: [
        { name: "Straw", role: "usual", lost: 1, setOut: 6 },
        { name: "Fleece", role: "usual", lost: 2, setOut: 8 },
      ],
    });
  });

  it.each([
    [1, 5, 0, true],
    [1, 6, 0, false],
    [1, 6, 1, false],
    [0, 6, 2, true],
    [5, 6, 2, true],
  ])("weigh heavily from a fifth of a treatment on: %d of %d and %d of 6: %s", (lost, setOut, others, strong) => {
    const [loss] = lossOf(...treatment("Straw", lost, setOut), ...treatment("Bare", others, 6));
    expect(loss).toMatchObject({ caution: "C03", strong });
  });
});

describe("still cropping in the last week", () => {
  const log = {
    plants: ["B1-1", "B2 - 1", "B1-1"],
    dates: ["2023-07-01", "2023-07-01", "2023-07-20"],
    amounts: [4, 9, 12],
  };

  it("of all plants where no treatment is known: 12 of 25", () => {
    expect(cautions(log)).toEqual([{ caution: "C09", name: null, share: 12 / 25 }, { caution: "C12" }]);
  });

  it.each([
    ["B1-1", "Straw", "B2 - 1", "Bare"],
    ["b1 - 1", "Straw", "b2-1", "Bare"],
  ])(
    "of the treatment that the list of all plants gives, however it spells the plant: %s",
    (one, straw, other, bare) => {
      const list = [
        ["plant", "mulch"],
        [one, straw],
        [other, bare],
      ];
      expect(cautions(log, list)[0]).toEqual({ caution: "C09", name: "Straw", share: 12 / 16 });
    },
  );

  it("also where the log itself puts spaces into the plant's name", () => {
    const spaced = { ...log, plants: ["B1 - 1", "B2-1", "B1 - 1"] };
    const list = [
      ["plant", "mulch"],
      ["B1-1", "Straw"],
      ["B2-1", "Bare"],
    ];
    expect(cautions(spaced, list)[0]).toEqual({ caution: "C09", name: "Straw", share: 12 / 16 });
  });
});

it("a plant listed twice is told first, the one season last", () => {
  const log = { plants: ["B1", "B2"], amounts: ["4 g", "lost"] };
  expect(codes(cautions(log, [["B1"], ["B2"], ["B1"]]))).toEqual(["C02", "C03", "C14", "C12"]);
});
