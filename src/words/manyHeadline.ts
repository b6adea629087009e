import type { ManyTreatments } from "../nouns/findings/manyTreatments";
import type { Verdict } from "../nouns/verdict";
import { counted } from "./counted";
import { isShown } from "./pairsShown";
import { shortLabel } from "./shortLabel";

/** What fits a cell (METHODS 8.5). */
const mostCharacters = 60;

/** COMPAREMANY's answer in one cell: "Straw up; 2 not settled", "Straw above Bare soil; 5 pairs not settled". */
export function manyHeadline(found: ManyTreatments): string {
  if (found.nothingIn !== null) return `No answer: no usable plants in ${shortLabel(found.nothingIn)}`;
  const { named, counts } = found.usual === null ? pairParts(found) : againstUsualParts(found);
  const text = named.join("; ");
  return text.length <= mostCharacters ? text : fitting(counts);
}

interface Parts {
  readonly named: readonly string[];
  readonly counts: readonly Count[];
}

/** How many treatments or pairs one part of the answer is about, and how it is told: "2 not settled". */
interface Count {
  readonly count: number;
  readonly text: string;
}

/** As many parts as fit, the first ones first; the others are added up. */
function fitting(counts: readonly Count[]): string {
  const ways = counts.map((_, left) => {
    const told = counts.slice(0, counts.length - left).map(({ text }) => text);
    const rest = counts.slice(counts.length - left).reduce((sum, { count }) => sum + count, 0);
    return [...told, ...(rest === 0 ? [] : [counted(rest, "other")])].join("; ");
  });
  return ways.find((way) => way.length <= mostCharacters) ?? "";
}

function againstUsualParts({ treatments }: ManyTreatments): Parts {
  const verdicts = treatments.flatMap(({ name, againstUsual }) =>
    againstUsual === null ? [] : [{ name: shortLabel(name), word: shortVerdict(againstUsual.verdict) }],
  );
  const words = [...new Set(verdicts.map(({ word }) => word))].sort((one, other) => rank(one) - rank(other));
  const kinds = words.map((word) => {
    const names = verdicts.filter((one) => one.word === word).map(({ name }) => name);
    return { word, names, count: names.length, text: `${names.length} ${word}` };
  });
  const named = kinds.flatMap(({ word, names, text }) =>
    isDirection(word) ? names.map((name) => `${name} ${word}`) : [text],
  );
  return { named, counts: kinds };
}

const order = ["up", "down", "leaning up", "leaning down", "near level", "not settled", "too few plants", "no answer"];

function rank(word: string): number {
  return order.indexOf(word);
}

function isDirection(word: string): boolean {
  return rank(word) < 4;
}

function shortVerdict(verdict: Verdict): string {
  if (verdict === "leaning-up" || verdict === "leaning-down") return verdict.replace("-", " ");
  if (verdict === "few") return "too few plants";
  if (verdict === "none") return "no answer";
  if (verdict === "level") return "near level";
  return verdict.startsWith("open") ? "not settled" : (verdict.split("-")[0] ?? "");
}

function pairParts(found: ManyTreatments): Parts {
  const pairs = found.pairs();
  const shown = pairs.filter((pair) => isShown(pair, found));
  const open = pairs.length - shown.length;
  const rest = open > 0 ? [{ count: open, text: `${counted(open, "pair")} not settled` }] : [];
  return {
    named: [
      ...shown.map(({ higher, lower }) => `${shortLabel(higher)} above ${shortLabel(lower)}`),
      ...rest.map(({ text }) => text),
    ],
    counts: [{ count: shown.length, text: `${counted(shown.length, "pair")} shown to differ` }, ...rest],
  };
}
