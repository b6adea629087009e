/** One way to do a piece of work; what it answers is thrown away, but must depend on the work. */
export type Work = () => unknown;

/** How two ways compare: the first's time over the second's. */
export interface Ratio {
  /** Of the rounds' ratios. */
  readonly median: number;
  /** The middle half of them. */
  readonly from: number;
  readonly to: number;
}

const ROUNDS = 15;
/** Shorter stretches than this would measure the clock. */
const LEAST_MS = 8;
/**
 * Work is done so long before it is timed: until then the compiler is at work as well, which takes processor time too.
 */
const WARM_UP_MS = 150;

/**
 * Processor time per run of each way, in milliseconds, round by round. Rounds alternate, so that a machine that slows
 * down slows all; what other programs take of the machine does not count.
 */
export function rounds(ways: readonly Work[]): readonly (readonly number[])[] {
  const repeats = ways.map(repeatsFor);
  return Array.from({ length: ROUNDS }, () => ways.map((work, at) => timed(work, repeats[at] ?? 1)));
}

/** The first way against each of the others, from the same rounds. */
export function ratios(times: readonly (readonly number[])[]): readonly Ratio[] {
  const [first = []] = times;
  return first.slice(1).map((_, at) => spreadOf(times.map((round) => (round[0] ?? 0) / (round[at + 1] ?? 0))));
}

/** Median and middle half. */
export function spreadOf(values: readonly number[]): Ratio {
  const sorted = values.toSorted((one, other) => one - other);
  const at = (share: number) => sorted[Math.round(share * (sorted.length - 1))] ?? Number.NaN;
  return { median: at(0.5), from: at(0.25), to: at(0.75) };
}

/** Warms the work up and finds how often it must run to take long enough. */
function repeatsFor(work: Work): number {
  const until = performance.now() + WARM_UP_MS;
  while (performance.now() < until) timed(work, 3);
  let repeats = 1;
  while (timed(work, repeats) * repeats < LEAST_MS) repeats *= 2;
  return repeats;
}

/** Takes every answer, so that the compiler cannot leave work out. */
const sink: { last: unknown } = { last: null };

function timed(work: Work, repeats: number): number {
  const start = process.cpuUsage();
  for (let i = 0; i < repeats; i += 1) sink.last = work();
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1000 / repeats;
}
