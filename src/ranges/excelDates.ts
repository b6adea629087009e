/** Serials of the years 1998 to 2050, which an amount in a column of smaller ones hardly is. */
const FIRST = 36_000;
const LAST = 55_000;

/** Amounts below this are small beside a date. */
const SMALL = 5_000;

/**
 * Whether a number looks like a date that Excel made of something typed ("5/7"): 36 000 to 55 000 while most numbers
 * of the column are under 5 000 (METHODS 4.1).
 *
 * @param numbers all numbers of the column
 * @returns a test for one of them
 */
export function excelDates(numbers: readonly number[]): (number: number) => boolean {
  const small = numbers.filter((number) => number < SMALL).length;
  if (2 * small <= numbers.length) return () => false;
  return (number) => number >= FIRST && number <= LAST;
}
