/** A source of chance that gives the same numbers for the same seed, for ever. */
export interface RandomSource {
  /** A whole number from 0 to 2³² − 1, all equally likely. */
  next32(): number;
  /** A whole number from 0 to n − 1, all equally likely (rejection, no modulo bias); n whole, 1 to 2³². */
  below(n: number): number;
  /** A number in [0, 1): a multiple of 2⁻⁵³, all equally likely. Takes two 32-bit numbers, high bits first. */
  uniform(): number;
}

const TWO_TO_32 = 2 ** 32;

/**
 * The generator xoshiro128** 1.1 started from a seed.
 *
 * The seed, taken modulo 2⁶⁴, starts SplitMix64; its first two outputs, low half before high half, are the four
 * 32-bit words of state. This recipe is part of the product: a draw number on a label must give its draw again.
 *
 * @param seed any whole number a double holds exactly; anything else is a programmer's mistake and throws RangeError
 *
 * Source: Blackman & Vigna (2021), ACM Transactions on Mathematical Software 47 (4), 36, and prng.di.unimi.it
 * (xoshiro128starstar.c, public domain); Steele, Lea & Flood (2014), OOPSLA, for SplitMix64.
 */
export function randomSource(seed: number): RandomSource {
  const next32 = xoshiro128(...stateFrom(seed));
  return {
    next32,
    below(n) {
      const fair = TWO_TO_32 - (TWO_TO_32 % n);
      let drawn = next32();
      while (drawn >= fair) drawn = next32();
      return drawn % n;
    },
    uniform() {
      const high = next32() >>> 5;
      const low = next32() >>> 6;
      return (high * 2 ** 26 + low) / 2 ** 53;
    },
  };
}

/** The four words of 32 bits that xoshiro128 walks on. */
export type State = readonly [number, number, number, number];

/** The bare generator xoshiro128** from a state that is not all zero. */
export function xoshiro128(...state: State): () => number {
  let [s0, s1, s2, s3] = state;
  return () => {
    const result = Math.imul(rotate(Math.imul(s1, 5), 7), 9) >>> 0;
    const shifted = s1 << 9;
    s2 ^= s0;
    s3 ^= s1;
    s1 ^= s2;
    s0 ^= s3;
    s2 ^= shifted;
    s3 = rotate(s3, 11);
    return result;
  };
}

function rotate(word: number, by: number): number {
  return (word << by) | (word >>> (32 - by));
}

function stateFrom(seed: number): State {
  const start = BigInt(seed);
  const first = splitMix64(start, 1n);
  const second = splitMix64(start, 2n);
  return [lowHalf(first), lowHalf(first >> 32n), lowHalf(second), lowHalf(second >> 32n)];
}

/** The nth output of SplitMix64 started from a seed. */
export function splitMix64(seed: bigint, nth: bigint): bigint {
  let z = BigInt.asUintN(64, seed + nth * 0x9e3779b97f4a7c15n);
  z = BigInt.asUintN(64, (z ^ (z >> 30n)) * 0xbf58476d1ce4e5b9n);
  z = BigInt.asUintN(64, (z ^ (z >> 27n)) * 0x94d049bb133111ebn);
  return z ^ (z >> 31n);
}

function lowHalf(word: bigint): number {
  return Number(BigInt.asUintN(32, word));
}
