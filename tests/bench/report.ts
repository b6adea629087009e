import { type Ratio, ratios, rounds, spreadOf, type Work } from "./contest";

/** What a ratio is to be. */
export type Target = { readonly most: number } | { readonly least: number };

/** One way to hold ours against. `least` asks that the rival take so many times longer than ours. */
export interface Rival {
  readonly name: string;
  readonly work: Work;
  readonly target?: Target;
}

export function say(text: string): void {
  process.stdout.write(`${text}\n`);
}

/** Prints a heading. */
export function heading(text: string): void {
  say(`\n${text}`);
}

/** What came of a contest. */
export interface Outcome {
  /** Ours, in milliseconds: the median round. */
  readonly ms: number;
  /** Ours over the first rival: the median round. */
  readonly ratio: number;
}

/** Runs ours and its rivals in alternating rounds and prints a line for each rival. */
export function contest(what: string, ours: Work, rivals: readonly Rival[]): Outcome {
  const times = rounds([ours, ...rivals.map(({ work }) => work)]);
  const found = ratios(times);
  for (const [at, { name, target }] of rivals.entries()) {
    const ratio = found[at];
    if (ratio !== undefined) line(`${what} / ${name}`, ratio, target);
  }
  return { ms: spreadOf(times.map(([own = 0]) => own)).median, ratio: found[0]?.median ?? Number.NaN };
}

/** One line of the table: a ratio ours / theirs, its middle half, its target. */
export function line(what: string, ratio: Ratio, target?: Target): void {
  const spread = `${plain(ratio.from)} – ${plain(ratio.to)}`;
  say(`${what.padEnd(76)} ${plain(ratio.median).padStart(9)}  (${spread})${verdict(ratio.median, target)}`);
}

/** A measured number with a unit and no rival. */
export function figure(what: string, value: number, unit: string): void {
  say(`${what.padEnd(76)} ${plain(value).padStart(9)} ${unit}`);
}

function verdict(ratio: number, target: Target | undefined): string {
  if (target === undefined) return "";
  if ("most" in target) return `  target ≤ ${target.most}: ${ratio <= target.most ? "met" : "MISSED"}`;
  return `  target ≤ 1/${target.least}: ${ratio <= 1 / target.least ? "met" : "MISSED"}`;
}

function plain(value: number): string {
  return value >= 1e5 || value < 1e-3 ? value.toExponential(1) : String(Number(value.toPrecision(3)));
}
