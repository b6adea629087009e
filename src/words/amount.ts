import { plainNumber } from "./plainNumber";

/**
 * An amount in the sheet's unit: "3020 g", "0.54", "24 100 g". Averages are told to three significant figures
 * (METHODS 4.5); amounts as typed may ask for more.
 */
export function amountText(amount: number, unit: string | null = null, figures = 3): string {
  const figure = plainNumber(...rounded(amount, figures));
  return unit === null || unit.trim() === "" ? figure : `${figure} ${unit.trim()}`;
}

/** The amount rounded to so many significant figures, and the decimal places that show them. */
function rounded(amount: number, figures: number): [amount: number, decimals: number] {
  if (amount === 0 || !Number.isFinite(amount)) return [amount, 0];
  const near = Number(amount.toPrecision(figures));
  const decimals = figures - 1 - Math.floor(Math.log10(Math.abs(near)));
  return [near, Math.min(100, Math.max(0, decimals))];
}
