import { isProblem, type Problem } from "../nouns/problem";

type Settled<Read> = { readonly [Key in keyof Read]: Exclude<Read[Key], Problem> };

/**
 * Arguments read side by side: the first problem among them, in their order, or all of them as read.
 */
export function allRead<Read extends Readonly<Record<string, unknown>>>(read: Read): Settled<Read> | Problem {
  for (const value of Object.values(read)) {
    if (typeof value === "object" && value !== null && isProblem(value)) return value;
  }
  return read as Settled<Read>;
}
