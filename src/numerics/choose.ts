/**
 * How many ways there are to choose k of n things: exact as long as the answer is below 2⁵³, else to about 1e-14.
 *
 * @param n whole, 0 or more
 * @param k whole; below 0 or above n there is no way: 0
 * @returns NaN for numbers that are not whole or n < 0
 */
export function choose(n: number, k: number): number {
  if (!(Number.isSafeInteger(n) && Number.isSafeInteger(k) && n >= 0)) return Number.NaN;
  if (k < 0 || k > n) return 0;
  const fewer = Math.min(k, n - k);
  let ways = 1;
  for (let i = 1; i <= fewer && ways < Number.POSITIVE_INFINITY; i += 1) {
    // dividing by common factors first keeps every product at most as large as a true count
    const shared = commonDivisor(ways, i);
    ways = (ways / shared) * ((n - fewer + i) / (i / shared));
  }
  return ways;
}

function commonDivisor(a: number, b: number): number {
  return b === 0 ? a : commonDivisor(b, a % b);
}
