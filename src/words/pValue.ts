/** A p value for people (METHODS 4.5): three places below 0.1, two above, never 0: "0.034", "0.34", "< 0.001". */
export function pText(p: number): string {
  if (p < 0.001) return "< 0.001";
  if (p > 0.99 && p < 1) return "> 0.99";
  return p === 1 ? "1" : p.toFixed(p < 0.1 ? 3 : 2);
}
