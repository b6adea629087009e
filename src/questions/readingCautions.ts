import type { Caution } from "../nouns/caution";
import type { Sample } from "../nouns/sample";

/** What the reading of the cells themselves gives to look out for: C14, C15 and C35 (METHODS 9.2). */
export function readingCautions(samples: readonly Sample[]): readonly Caution[] {
  const zeros = samples.reduce((sum, { zerosUnverified }) => sum + zerosUnverified, 0);
  const read = samples.flatMap(({ entries }) => entries.filter(isReadIntoNumber)).length;
  const averages = samples.flatMap(({ averageAtEnd }) => (averageAtEnd === null ? [] : [averageAtEnd]));
  return [
    ...(read > 0 ? [{ caution: "C14", count: read } as const] : []),
    ...(zeros > 0 ? [{ caution: "C15", zeros } as const] : []),
    ...averages.map((place) => ({ caution: "C35", place }) as const),
  ];
}

function isReadIntoNumber(entry: Sample["entries"][number]): boolean {
  return entry.kind === "value" && (entry.read === "mark-removed" || entry.read === "unit-converted");
}
