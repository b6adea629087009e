import { amountText } from "./amount";
import { counted } from "./counted";
import type { Names } from "./names";
import { sentenceStart } from "./sentenceStart";

/** Both averages and how many plants each rests on. */
export interface Averages {
  readonly names: Names;
  readonly unit: string | null;
  readonly usualMean: number;
  readonly triedMean: number;
  readonly usualPlants: number;
  readonly triedPlants: number;
}

/** The start of a finding: "Straw gave 4350 g a plant (7 plants) and Bare soil 3020 g (8 plants)". */
export function gave({ names, unit, usualMean, triedMean, usualPlants, triedPlants }: Averages): string {
  const triedAverage = `${amountText(triedMean, unit)} a plant (${counted(triedPlants, "plant")})`;
  const usualAverage = `${amountText(usualMean, unit)} (${counted(usualPlants, "plant")})`;
  return `${sentenceStart(names.tried)} gave ${triedAverage} and ${names.usual} ${usualAverage}`;
}
