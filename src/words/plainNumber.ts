/**
 * A number written out for people: a true minus sign, never "−0" nor an exponent, and thousands set apart by a space
 * from five digits on ("4350", "24 100"). `decimals` is the largest number of decimal places; zeros at their end go.
 * A number that is not finite is a programmer's mistake and gives "?".
 */
export function plainNumber(value: number, decimals = 0): string {
  if (!Number.isFinite(value)) return "?";
  const [whole = "0", fraction = ""] = writtenOut(Math.abs(value), decimals).split(".");
  const tail = fraction.replace(/0+$/, "");
  const digits = tail === "" ? grouped(whole) : `${grouped(whole)}.${tail}`;
  return value < 0 && digits !== "0" ? `−${digits}` : digits;
}

/** toFixed falls back to exponents from 10²¹ on; whole numbers of that size are written out by BigInt. */
function writtenOut(size: number, decimals: number): string {
  return size < 1e21 ? size.toFixed(decimals) : BigInt(size).toString();
}

function grouped(whole: string): string {
  return whole.length < 5 ? whole : whole.replace(/\B(?=(\d{3})+$)/g, " ");
}
