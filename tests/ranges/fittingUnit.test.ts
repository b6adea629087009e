import { expect, it } from "vitest";
import { cellMeaning } from "../../src/ranges/cellMeaning";
import { fittingUnit } from "../../src/ranges/fittingUnit";

const fitting = (middle: number, ...cells: readonly (string | number)[]) =>
  fittingUnit(
    cells.map((cell) => cellMeaning(cell)),
    middle,
  );

it("is the typed unit in which every typed amount comes near the middle, or else grams", () => {
  expect(fitting(3, "3.1 kg", "2900 g")).toBe("kg");
  expect(fitting(3000, "3.1 kg", "2900 g")).toBe("g");
  expect(fitting(300, "0.235kg")).toBe("g");
  expect(fitting(40, "38 cm")).toBe("cm");
  expect(fitting(3, "3.1 kg", "0 kg")).toBe("kg");
});

it("is none where no unit fits, two fit as well, nothing was typed or no number is bare", () => {
  expect(fitting(16, "1 lb")).toBeNull();
  expect(fitting(40, "10 oz", "300 g")).toBeNull();
  expect(fitting(300, 280, "lost")).toBeNull();
  expect(fitting(0, "3 kg")).toBeNull();
  expect(fitting(0, "0 kg")).toBeNull();
});

it("is near up to ten times as much or as little", () => {
  expect(fitting(3, "30 kg")).toBe("kg");
  expect(fitting(30, "3 kg")).toBe("kg");
  expect(fitting(3, "30.01 kg")).toBeNull();
  expect(fitting(30.01, "3 kg")).toBeNull();
});
