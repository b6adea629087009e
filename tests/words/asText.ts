import type { Explanation } from "../../src/nouns/explanation";

/** An explanation as an approved file shows it, part by part. */
export function asText({ finding, say, compared, luck, lookOutFor, next, workings }: Explanation): string {
  return [
    part("finding", [finding]),
    part("you can say", [say]),
    part("compared", [compared]),
    part("luck", luck),
    part(
      "look out for",
      lookOutFor.map(({ code, sentence }) => `[${code}] ${sentence}`),
    ),
    part("next", next),
    part("workings", workings),
  ].join("\n");
}

function part(title: string, lines: readonly string[]): string {
  return `${title}:\n${lines.map((line) => `  ${line}`).join("\n")}`;
}
