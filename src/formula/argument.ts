import type { Token } from "@borgar/fx";
import type { Cell } from "../nouns/cell";
import type { Argument } from "./call";

const references: ReadonlySet<string> = new Set(["range", "range_beam", "range_named", "structured"]);

/**
 * Reads one argument of a call.
 *
 * @param tokens of the argument, without spaces at either end; calls of ours are read elsewhere
 */
export function readArgument(tokens: readonly Token[]): Argument {
  const text = tokens.map(({ value }) => value).join("");
  if (text === "") return { kind: "omitted", text };
  const reference = readReference(tokens);
  if (reference !== null) return { kind: "reference", text: reference };
  const cell = readValue(tokens);
  if (cell !== undefined) return { kind: "value", text, cell };
  const cells = readBlock(tokens);
  return cells === null ? { kind: "expression", text } : { kind: "block", text, cells };
}

/** A lone reference, brackets around it taken off; null for anything else. */
function readReference(tokens: readonly Token[]): string | null {
  const inner = tokens.filter(({ type }) => type !== "whitespace");
  while (inner[0]?.value === "(" && inner.at(-1)?.value === ")") {
    inner.shift();
    inner.pop();
  }
  const [first, second] = inner;
  if (first === undefined || !references.has(first.type)) return null;
  if (inner.length === 1) return first.value;
  return inner.length === 2 && second?.value === "#" ? `${first.value}#` : null;
}

/** A typed value: a number with signs before and percent signs behind it, a text, a truth value, an error. */
function readValue(tokens: readonly Token[]): Cell | undefined {
  const inner = tokens.filter(({ type }) => type !== "whitespace");
  let sign = 1;
  while (inner[0]?.type === "operator" && /^[+-]$/.test(inner[0].value)) sign *= inner.shift()?.value === "-" ? -1 : 1;
  const [first, ...behind] = inner;
  if (first?.type === "number" && behind.every(({ value }) => value === "%")) {
    return (sign * Number(first.value)) / 100 ** behind.length;
  }
  return tokens.length === 1 ? readWord(tokens[0]) : undefined;
}

function readWord(token: Token | undefined): Cell | undefined {
  if (token?.type === "string" && !token.unterminated) return token.value.slice(1, -1).replaceAll('""', '"');
  if (token?.type === "bool") return token.value.toUpperCase() === "TRUE";
  return token?.type === "error" ? { error: token.value.toUpperCase() } : undefined;
}

/** A typed array; null when it is none, or its rows differ in length. */
function readBlock(tokens: readonly Token[]): readonly (readonly Cell[])[] | null {
  if (tokens[0]?.value !== "{" || tokens.at(-1)?.value !== "}") return null;
  const rows = split(tokens.slice(1, -1), ";").map((row) => split(row, ","));
  const cells = rows.map((row) => row.map(readValue).filter((cell) => cell !== undefined));
  const width = rows[0]?.length;
  return rows.every((row, at) => row.length === width && cells[at]?.length === width) ? cells : null;
}

function split(tokens: readonly Token[], separator: string): Token[][] {
  const parts: Token[][] = [[]];
  for (const token of tokens) {
    if (token.type === "operator" && token.value === separator) parts.push([]);
    else if (token.type !== "whitespace") parts.at(-1)?.push(token);
  }
  return parts;
}
