/**
 * Whole numbers below a limit, the same for the same seed: a linear congruential generator with the multiplier and
 * increment of Numerical Recipes (Press et al. 2007, section 7.1.4), of which the upper bits are used.
 */
export function seeded(seed: number): (below: number) => number {
  let state = seed >>> 0;
  return (below) => {
    state = (Math.imul(1_664_525, state) + 1_013_904_223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
}
