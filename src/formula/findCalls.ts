import { type Token, tokenize } from "@borgar/fx";
import { readArgument } from "./argument";
import type { Argument, Call } from "./call";

/** Excel takes no longer formula. */
const longest = 8192;
const ours = /^(?:_xlfn\.)?FAIRBED\.(\w+)$/i;

/** A bracket that is still open. */
interface Open {
  /** The function, when the bracket opens one of our calls. */
  readonly id: string | null;
  /** Number of the name's token. */
  readonly first: number;
  /** Numbers of the tokens that the arguments start with. */
  readonly starts: number[];
}

/** A finished call, and the numbers of its first and last token. */
interface Found {
  readonly call: Call;
  readonly first: number;
  readonly last: number;
}

/**
 * Finds our calls in a formula: in the order of their names, so an outer one before those in its arguments.
 *
 * @param formula in the neutral form (English names, commas), with or without "="
 * @returns no calls for a text that is none of ours; of a broken formula those that are whole
 */
export function findCalls(formula: string): readonly Call[] {
  if (formula.length > longest || !/fairbed\./i.test(formula)) return [];
  const reading: Reading = { tokens: tokenize(formula), open: [], found: new Map() };
  for (const [at, { type, value }] of reading.tokens.entries()) {
    if (type === "operator") steps[value]?.(reading, at);
  }
  return [...reading.found.values()].sort((one, other) => one.first - other.first).map(({ call }) => call);
}

/** A formula as far as it has been read. */
interface Reading {
  readonly tokens: readonly Token[];
  readonly open: Open[];
  /** The calls that are closed, by the number of their first token. */
  readonly found: Map<number, Found>;
}

/** What the operators that matter do to the reading. */
const steps: Readonly<Record<string, (reading: Reading, at: number) => void>> = {
  "(": ({ open, tokens }, at) => open.push(opened(tokens, at)),
  "{": ({ open, tokens }, at) => open.push(opened(tokens, at)),
  ",": ({ open }, at) => open.at(-1)?.starts.push(at + 1),
  ")": close,
  "}": close,
};

function opened(tokens: readonly Token[], at: number): Open {
  const before = tokens[at - 1];
  const name = before?.type === "func" && tokens[at]?.value === "(" ? ours.exec(before.value) : null;
  return { id: name?.[1]?.toUpperCase() ?? null, first: at - 1, starts: [at + 1] };
}

/** Closes a bracket, and notes its call if it is one of ours. */
function close({ tokens, open, found }: Reading, end: number): void {
  const closed = open.pop();
  if (closed === undefined || closed.id === null) return;
  const args = closed.starts.map((start, index): Argument => {
    const [first, last] = trimmed(tokens, start, (closed.starts[index + 1] ?? end + 1) - 2);
    const nested = found.get(first);
    if (nested?.last === last) return { kind: "call", text: nested.call.text, call: nested.call };
    return readArgument(tokens.slice(first, last + 1));
  });
  const text = tokens
    .slice(closed.first, end + 1)
    .map(({ value }) => value)
    .join("");
  const none = args.length === 1 && args[0]?.kind === "omitted";
  const call = { id: closed.id, text, arguments: none ? [] : args };
  found.set(closed.first, { call, first: closed.first, last: end });
}

/** The first and the last token of an argument that are no spaces. */
function trimmed(tokens: readonly Token[], from: number, to: number): [number, number] {
  let [first, last] = [from, to];
  while (first <= last && tokens[first]?.type === "whitespace") first++;
  while (last >= first && tokens[last]?.type === "whitespace") last--;
  return [first, last];
}
