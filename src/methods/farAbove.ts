import { median } from "../numerics/median";

/** A pick of so many times the middle pick is likely a slip, where the number of fruit is not known. */
const TIMES_MIDDLE = 8;

/** With fewer picks nobody can say what is usual. */
const ENOUGH = 5;

/**
 * Which picks are far above the rest: at least eight times the middle one (METHODS 8.11). NaN and picks of 0 do not
 * count.
 *
 * @returns indices, rising
 */
export function farAbove(amounts: Float64Array): readonly number[] {
  const [picks, most] = countAndMost(amounts);
  if (picks < ENOUGH || !mayBeFar(amounts, picks, most)) return [];
  const middle = median([...amounts.filter((amount) => amount > 0)]);
  const far: number[] = [];
  for (const [at, amount] of amounts.entries()) if (amount >= TIMES_MIDDLE * middle) far.push(at);
  return far;
}

function countAndMost(amounts: Float64Array): readonly [count: number, most: number] {
  let [count, most] = [0, 0];
  // by index, as in the other loops over a whole log: an iterator takes several times as long for 100 000 rows
  for (let at = 0; at < amounts.length; at++) {
    const amount = amounts[at] as number;
    if (!(amount > 0)) continue;
    count++;
    if (amount > most) most = amount;
  }
  return [count, most];
}

/** Nothing is far above the middle unless half of the picks lie below an eighth of the largest: no sorting for most logs. */
function mayBeFar(amounts: Float64Array, picks: number, most: number): boolean {
  let small = 0;
  for (let at = 0; at < amounts.length; at++) {
    const amount = amounts[at] as number;
    if (amount > 0 && TIMES_MIDDLE * amount <= most) small++;
  }
  return 2 * small >= picks;
}
