/** Excel's numbers of days of the years 1998 to 2050. */
const FIRST = 36_000;
const LAST = 55_000;

/** Whether a number may be Excel's for a day of our years (METHODS 4.1): 36 000 to 55 000. */
export function isDateSerial(number: number): boolean {
  return number >= FIRST && number <= LAST;
}
