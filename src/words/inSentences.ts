import { listText } from "./list";
import { sentences } from "./sentences";
import { wordCount } from "./wordCount";

const mostWords = 25;

/**
 * A list told in as few sentences as can be, none longer than 25 words (METHODS 6.3).
 *
 * @param tell makes the sentence of a list, and of how many items it holds
 */
export function inSentences(items: readonly string[], tell: (list: string, items: number) => string): string {
  const told = (some: readonly string[]) => tell(listText(some), some.length);
  const runs: string[][] = [];
  for (const item of items) {
    const longer = [...(runs.at(-1) ?? []), item];
    if (runs.length > 0 && wordCount(told(longer)) <= mostWords) runs[runs.length - 1] = longer;
    else runs.push([item]);
  }
  return sentences(...runs.map(told));
}
