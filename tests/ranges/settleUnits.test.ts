import { describe, expect, it } from "vitest";
import type { Cell } from "../../src/nouns/cell";
import { cellMeaning } from "../../src/ranges/cellMeaning";
import { settleUnits, withoutUnits } from "../../src/ranges/settleUnits";
import type { Unit } from "../../src/ranges/unit";

function settled(cells: readonly Cell[], heading: Unit | null = null) {
  const column = settleUnits(cells.map(cellMeaning), heading);
  return {
    unit: column.unit,
    values: column.cells.map((cell) =>
      cell.means === "amount" ? cell.value : cell.means === "lost" ? "lost" : cell.why,
    ),
  };
}

describe("settleUnits with a unit in the heading", () => {
  it("converts what was typed into it and takes bare numbers as they are", () => {
    expect(settled(["0.235kg", 177, "506 g"], "g")).toEqual({ unit: "g", values: [235, 177, 506] });
  });

  it("keeps a cell of another kind out", () => {
    expect(settled(["12 cm", 177], "g")).toEqual({ unit: "g", values: ["unit-unclear", 177] });
  });

  it("does not judge how far a typed amount is from the rest", () => {
    expect(settled(["5 g", 177, 180], "g")).toEqual({ unit: "g", values: [5, 177, 180] });
  });
});

describe("settleUnits without a unit in the heading", () => {
  it("takes the only unit typed for the bare numbers as well", () => {
    expect(settled(["3.1 kg", 2.9, "lost", 3.3])).toEqual({ unit: "kg", values: [3.1, 2.9, "lost", 3.3] });
  });

  it("takes the typed unit in which all that was typed comes near the bare numbers", () => {
    expect(settled(["3.1 kg", "2900 g", 3000])).toEqual({ unit: "g", values: [3100, 2900, 3000] });
    expect(settled(["1 lb", "8 oz", 1.2])).toEqual({ unit: "lb", values: [1, 0.5, 1.2] });
  });

  it("takes grams where they alone fit, though nobody typed them", () => {
    expect(settled(["0.235kg", 180, 300])).toEqual({ unit: "g", values: [235, 180, 300] });
    expect(settled([3200, "3.1 kg", 2900])).toEqual({ unit: "g", values: [3200, 3100, 2900] });
  });

  it("leaves out cells with a unit when several are typed and two fit as well, or none", () => {
    expect(settled(["10 oz", "300 g", 40])).toEqual({ unit: null, values: ["unit-unclear", "unit-unclear", 40] });
    expect(settled(["1 lb", "12 cm", 300])).toEqual({ unit: null, values: ["unit-unclear", "unit-unclear", 300] });
  });

  it("converts everything into the first unit typed when no number is bare", () => {
    expect(settled(["1 lb", "8 oz", "none", "dead"])).toEqual({ unit: "lb", values: [1, 0.5, 0, "lost"] });
  });

  it("keeps out what does not measure the same thing as the first unit typed", () => {
    expect(settled(["300 g", "12 cm"])).toEqual({ unit: "g", values: [300, "unit-unclear"] });
  });

  it("names none where none is typed", () => {
    expect(settled([1, "2", "lost"])).toEqual({ unit: null, values: [1, 2, "lost"] });
  });
});

describe("settleUnits where one unit is typed and does not fit", () => {
  it("a typed amount far from the bare numbers is unclear, and so is the column's unit", () => {
    expect(settled([16, "1 lb", 20])).toEqual({ unit: null, values: [16, "unit-unclear", 20] });
    expect(settled([177, "12 cm", 180])).toEqual({ unit: null, values: [177, "unit-unclear", 180] });
  });

  it("far is more than ten times above or below the middle", () => {
    const cells = ["100 cm", "101 cm", "1 cm", "0.9 cm", 10, 10, 10, 10];
    expect(settled(cells)).toEqual({
      unit: "cm",
      values: [100, "unit-unclear", 1, "unit-unclear", 10, 10, 10, 10],
    });
  });

  it("where as many are typed as bare, the typed ones are unclear", () => {
    expect(settled(["1 lb", 16])).toEqual({ unit: null, values: ["unit-unclear", 16] });
  });

  it("words are of neither sort: lost plants do not make the typed ones more, nor does none the bare ones", () => {
    const lost = settled(["1 lb", "lost", "lost", 16, 20]);
    expect(lost).toEqual({ unit: null, values: ["unit-unclear", "lost", "lost", 16, 20] });
    expect(settled(["1 lb", "1.5 lb", 16, "none"])).toEqual({ unit: "lb", values: [1, 1.5, "unit-unclear", 0] });
  });

  it("plants that bore nothing are of neither sort, whether their 0 is among the cells or beside them", () => {
    expect(settled(["1 lb", "1.5 lb", 16, 0])).toEqual({ unit: "lb", values: [1, 1.5, "unit-unclear", 0] });
    const bore = settled(["1 lb", "0 lb", 16]);
    expect(bore, "0 lb does not say that 16 is in lb").toEqual({
      unit: null,
      values: ["unit-unclear", "unit-unclear", 16],
    });
    const { unit, isUnclear } = settleUnits(["1 lb", "1.5 lb"].map(cellMeaning), null, Float64Array.of(16, 0));
    expect([unit, isUnclear(16)]).toEqual(["lb", true]);
  });

  it("a bare number far from the typed amounts is unclear", () => {
    expect(settled(["1 lb", 16, "1.5 lb"])).toEqual({ unit: "lb", values: [1, "unit-unclear", 1.5] });
  });

  it("a bare number that is not among the cells is judged like one that is", () => {
    const typed = ["1 lb", "1.5 lb"].map(cellMeaning);
    const { unit, isUnclear } = settleUnits(typed, null, Float64Array.of(16));
    expect([unit, isUnclear(16), isUnclear(1.2), isUnclear(0), isUnclear(Number.NaN)]).toEqual([
      "lb",
      true,
      false,
      false,
      false,
    ]);
    expect(settleUnits(typed, "lb", Float64Array.of(16)).isUnclear(16)).toBe(false);
  });

  it("a plant that bore nothing is not far from anything, and says nothing of the unit", () => {
    expect(settled([3200, "0 g", 2900])).toEqual({ unit: "g", values: [3200, 0, 2900] });
    expect(settled([0, "3.1 kg", "2900 g"])).toEqual({ unit: "kg", values: [0, 3.1, 2.9] });
  });
});

it("withoutUnits leaves out whatever has a unit, and nothing else", () => {
  const { unit, cells } = withoutUnits(["12", "200 g", "lost", "none"].map(cellMeaning));
  expect(unit).toBeNull();
  expect(cells.map((cell) => (cell.means === "unusable" ? cell.why : cell.means))).toEqual([
    "amount",
    "unit-unclear",
    "lost",
    "amount",
  ]);
});
