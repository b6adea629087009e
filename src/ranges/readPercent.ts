import { ordinaryText } from "./ordinaryText";
import { readAmount } from "./readAmount";

/**
 * A percent typed as text, as a fraction: "30%", "30 %", "30,5 %" (0.305). For arguments that ask for a percent only.
 *
 * @returns null when the text has no percent sign at its end, or no sure number before it
 */
export function readPercent(text: string): number | null {
  const ordinary = ordinaryText(text).trim();
  if (!ordinary.endsWith("%")) return null;
  const points = readAmount(ordinary.slice(0, -1));
  return points.amount === "read" && points.unit === null && !points.doubtful ? points.value / 100 : null;
}
