import { plainNumber } from "./plainNumber";

/**
 * An amount of money without its currency, which the sheet does not say: two places below 100 ("1.90", "−0.35"), whole
 * from there on ("1250").
 */
export function moneyText(amount: number): string {
  const size = Math.abs(amount);
  if (Number(size.toFixed(2)) >= 100) return plainNumber(amount);
  const pence = size.toFixed(2);
  return amount < 0 && Number(pence) !== 0 ? `−${pence}` : pence;
}
