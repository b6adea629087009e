import type { Call } from "./call";

/**
 * The formula that makes the same call with one argument replaced.
 *
 * @param index the argument's number, from 0; arguments missing before it are left empty
 * @param text the new argument's source, "" to leave it out
 * @returns a formula, starting with "="
 */
export function withArgument(call: Call, index: number, text: string): string {
  const count = Math.max(call.arguments.length, index + 1);
  const args = Array.from({ length: count }, (_, at) => (at === index ? text : (call.arguments[at]?.text ?? "")));
  while (args.at(-1) === "") args.pop();
  return `=FAIRBED.${call.id}(${args.join(",")})`;
}
