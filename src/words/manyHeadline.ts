import type { ManyTreatments } from "../nouns/findings/manyTreatments";
import type { Verdict } from "../nouns/verdict";
import { counted } from "./counted";
import { shortLabel } from "./shortLabel";

/** What fits a cell (METHODS 8.5). */
const mostCharacters = 60;

/** COMPAREMANY's answer in one cell: "Straw up; 2 not settled", "Straw above Bare soil; 5 pairs not settled". */
export function manyHeadline(found: ManyTreatments): string {
  if (found.nothingIn !== null) return `No answer: no usable plants in ${shortLabel(found.nothingIn)}`;
  const parts = found.usual === null ? pairParts(found) : againstUsualParts(found);
  const [long, short] = [parts.named, parts.numbered].map((texts) => texts.join("; "));
  return (long ?? "").length <= mostCharacters ? (long ?? "") : (short ?? "");
}

interface Parts {
  readonly named: readonly string[];
  readonly numbered: readonly string[];
}

function againstUsualParts({ treatments }: ManyTreatments): Parts {
  const verdicts = treatments.flatMap(({ name, againstUsual }) =>
    againstUsual === null ? [] : [{ name: shortLabel(name), word: shortVerdict(againstUsual.verdict) }],
  );
  const words = [...new Set(verdicts.map(({ word }) => word))].sort((one, other) => rank(one) - rank(other));
  const numbered = words.map((word) => `${verdicts.filter((one) => one.word === word).length} ${word}`);
  const named = words.flatMap((word, at) =>
    isDirection(word)
      ? verdicts.filter((one) => one.word === word).map(({ name }) => `${name} ${word}`)
      : [numbered[at] ?? ""],
  );
  return { named, numbered };
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
  const shown = pairs.filter(({ pValue }) => typeof pValue === "number" && pValue < 1 - found.confidence);
  const open = pairs.length - shown.length;
  const rest = open > 0 ? [`${counted(open, "pair")} not settled`] : [];
  return {
    named: [...shown.map(({ higher, lower }) => `${shortLabel(higher)} above ${shortLabel(lower)}`), ...rest],
    numbered: [`${counted(shown.length, "pair")} shown to differ`, ...rest],
  };
}
