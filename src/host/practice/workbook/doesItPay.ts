import type { ICellData } from "@univerjs/core";
import { answer, heading, note, number, text } from "./cells";
import { marlpitCorner } from "./marlpitCorner";
import type { SheetPlan } from "./sheetData";

/** The trial's straw weighed against its cost: prices that a grower can change, and what they leave (invented). */
export const doesItPay: SheetPlan = {
  id: "does-it-pay",
  name: "Does it pay",
  widths: [38, 104, 122, 20, 310, 300],
  merged: ["A11:C13"],
  cells: {
    A1: heading("Bed"),
    B1: heading("Bare soil (kg)"),
    C1: heading("Straw (kg)"),
    ...bedCells(),
    A11: note("Marlpit Corner: kilograms of courgettes per plant. Invented data for practice."),
    E1: heading("Prices and costs: type your own"),
    E2: text("Price of a kilogram"),
    F2: number(2.5, "0.00"),
    E3: text("Straw and work, extra for each plant"),
    F3: number(1.1, "0.00"),
    E4: text("Plants next year"),
    F4: number(120),
    E6: heading("Question"),
    F6: heading("Answer"),
    E7: text("Does straw pay, bed by bed?"),
    F7: worth("What it says"),
    E8: text("How much money is left for each plant?"),
    F8: worth("Money left per plant", "0.00"),
    E9: text("At the lowest?"),
    F9: worth("Money left, low", "0.00"),
    E10: text("At the highest?"),
    F10: worth("Money left, high", "0.00"),
    E11: text("How much more must straw bear to pay?"),
    F11: worth("Break-even change", "0.0%"),
    E12: text("And for all plants next year?"),
    F12: worth("For the next planting, middle", "0"),
    E13: text("In plain words?"),
    F13: worth("words"),
  },
};

function worth(show: string, pattern?: Parameters<typeof answer>[1]): ICellData {
  return answer(`=FAIRBED.WORTHIT(B1:B9,C1:C9,F2,F3,"${show}","pairs",F4)`, pattern);
}

/** A row for each bed: its number, then the plant on bare soil and the one under straw. */
function bedCells(): Record<string, ICellData> {
  const beds = [...new Set(marlpitCorner.map(({ bed }) => bed))];
  return Object.fromEntries(
    beds.flatMap((bed, down) => {
      const plants = marlpitCorner.filter((plant) => plant.bed === bed);
      const of = (mulch: string) => kilograms(plants.find((plant) => plant.mulch === mulch)?.grams ?? "");
      return [
        [`A${down + 2}`, number(bed)],
        [`B${down + 2}`, of("Bare soil")],
        [`C${down + 2}`, of("Straw")],
      ] as const;
    }),
  );
}

function kilograms(grams: number | string): ICellData {
  return typeof grams === "number" ? number(grams / 1000) : text(grams);
}
