/** Turns a figure into a place along one side of a picture. */
export type Scale = (value: number) => number;

/** Straight from [low, high] to [from, to]; figures outside fall outside. */
export function scale([low, high]: readonly [number, number], [from, to]: readonly [number, number]): Scale {
  const span = high - low || 1;
  return (value) => Math.round((from + ((value - low) / span) * (to - from)) * 10) / 10;
}

/**
 * Round figures for an axis: multiples of 1, 2 or 5 times a power of ten within [low, high].
 *
 * @param about how many are wished for
 */
export function ticks(low: number, high: number, about: number): readonly number[] {
  const rough = (high - low) / about;
  if (!(rough > 0)) return [low];
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = ([1, 2, 5].find((times) => times * power >= rough * 0.999) ?? 10) * power;
  const first = Math.ceil(low / step - 1e-9);
  const count = Math.floor(high / step + 1e-9) - first + 1;
  return Array.from({ length: count }, (_, index) => Number(((first + index) * step).toPrecision(12)));
}
