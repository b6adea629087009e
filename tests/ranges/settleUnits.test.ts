import { describe, expect, it } from "vitest";
import type { Cell } from "../../src/nouns/cell";
import { cellMeaning } from "../../src/ranges/cellMeaning";
import { settleUnits } from "../../src/ranges/settleUnits";
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

  it("leaves out cells with a unit when several are typed and bare numbers stand beside them", () => {
    expect(settled(["3.1 kg", "2900 g", 3000])).toEqual({ unit: null, values: ["unit-unclear", "unit-unclear", 3000] });
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

describe("settleUnits never takes 3.1 kg for 3.1 among thousands", () => {
  it("a typed amount far from the bare numbers is unclear, and so is the column's unit", () => {
    expect(settled([3200, "3.1 kg", 2900])).toEqual({ unit: null, values: [3200, "unit-unclear", 2900] });
  });

  it("a bare number far from the typed amounts is unclear", () => {
    expect(settled(["3.1 kg", 2900, "3.3 kg"])).toEqual({ unit: "kg", values: [3.1, "unit-unclear", 3.3] });
  });

  it("a plant that bore nothing is not far from anything", () => {
    expect(settled([3200, "0 g", 2900])).toEqual({ unit: "g", values: [3200, 0, 2900] });
  });
});
