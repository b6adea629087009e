import { isDateSerial } from "./isDateSerial";

/** Amounts below this are small beside a date. */
const SMALL = 5_000;

/**
 * Whether a number looks like a date that Excel made of something typed ("5/7"): 36 000 to 55 000 while most numbers
 * of the column are under 5 000 (METHODS 4.1).
 *
 * @param numbers all numbers of the column; NaN stands for a cell without one
 * @returns a test for one of them
 */
export function excelDates(numbers: readonly number[] | Float64Array): (number: number) => boolean {
  let [small, known] = [0, 0];
  for (const number of numbers) {
    if (number < SMALL) small += 1;
    if (!Number.isNaN(number)) known += 1;
  }
  if (2 * small <= known) return () => false;
  return isDateSerial;
}
