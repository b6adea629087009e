import { describe, expect, test } from "vitest";
import type { ManyTreatments } from "../../src/nouns/findings/manyTreatments";
import type { WorthIt } from "../../src/nouns/findings/worthIt";
import type { Verdict } from "../../src/nouns/verdict";
import { decision, decisionSentences } from "../../src/words/decision";
import { mirrored } from "../../src/words/direction";
import { explain } from "../../src/words/explain";
import { verdictText } from "../../src/words/verdict";
import { strawFinding } from "../pane/strawFinding";
import { neverSay, readingGrade, sentencesOf, wordsOf } from "./plainEnglish";
import { typicalMany } from "./typicalMany";
import { typicalSeasons } from "./typicalSeasons";

const verdicts: readonly Verdict[] = [
  "up-enough",
  "up-unclear",
  "up-small",
  "leaning-up",
  "open-up",
  "open",
  "level",
  "open-down",
  "down-enough",
  "down-small",
  "down-unclear",
  "leaning-down",
  "few",
  "none",
];

/** WORTHIT's answer on the whole, with this harvest and cost. */
function worth(change: Partial<WorthIt>): string {
  const pays = typicalSeasons["WORTHIT straw pays"];
  if (pays?.finding !== "worth-it") throw new Error("no answer of WORTHIT");
  const next = explain({ ...pays, nextPlants: null, ...change }).next;
  return next.slice(1).join(" ");
}

const paid = ["pays", "may-or-may-not", "does-not-pay"] as const;
const costs = [
  ["costs more", 1],
  ["costs as much", 0],
  ["costs less", -1],
] as const;

test("METHODS 2.1's table as approved: both columns, then what WORTHIT makes of it", async () => {
  const rows = verdicts.map((verdict) => `${verdictText(verdict)}\n${indented(decisionSentences(verdict))}`);
  const worths = verdicts.flatMap((harvest) =>
    costs.map(([cost, extraCost]) => {
      const lines = paid.map((verdict) => `${verdict}: ${worth({ harvest, extraCost, verdict })}`);
      return `${verdictText(harvest)}, ${cost}\n${indented(lines)}`;
    }),
  );
  await expect(`${[...rows, "", "WORTHIT", ...worths].join("\n")}\n`).toMatchFileSnapshot("approved/decisions.txt");
});

function indented(lines: readonly string[]): string {
  return lines.map((line) => `  ${line}`).join("\n");
}

describe.each(verdicts)("%s", (verdict) => {
  test("is decided in plain sentences of at most 25 words", () => {
    const told = decisionSentences(verdict).join(" ");
    expect(sentencesOf(told).filter((sentence) => wordsOf(sentence).length > 25)).toEqual([]);
    expect(readingGrade(told)).toBeLessThanOrEqual(8);
    expect(neverSay.filter((claim) => claim.test(told))).toEqual([]);
  });

  test("where less is wanted the table is read mirrored", () => {
    const lessWanted = { size: 0.1, lessWanted: true, given: true };
    const straight = explain(strawFinding({ verdict })).next.slice(0, 1);
    expect(explain(strawFinding({ verdict: mirrored(verdict), worthwhile: lessWanted })).next.slice(0, 1)).toEqual(
      straight,
    );
  });
});

test("no row tells to pay for what was not shown to gain, nor to drop what was", () => {
  for (const verdict of verdicts) {
    const { cheap, costly } = decision(verdict);
    if (!verdict.startsWith("up")) expect(`${cheap} ${costly}`).not.toMatch(/\bswitch\b|use it/i);
    if (!/down|level/.test(verdict)) expect(`${cheap} ${costly}`).not.toMatch(/\bdrop\b/);
  }
});

/** The next steps of the four mulches after one change. */
function mulches(change: Partial<ManyTreatments>): readonly string[] {
  const four = typicalMany["COMPAREMANY four mulches in beds against bare soil"];
  if (four?.finding !== "many-treatments") throw new Error("no comparison of several treatments");
  return explain({ ...four, ...change }).next;
}

test("several treatments: where less is wanted, more is not ahead", () => {
  expect(mulches({})[0]).toBe("Try Straw against Bare soil once more.");
  const next = mulches({ worthwhile: { size: 0.1, lessWanted: true, given: true } });
  expect(next).toEqual(["None came out lower than Bare soil. Make no change on this evidence."]);
});

test("several treatments: where even the front-runner is behind, the idea is dropped", () => {
  const { treatments } = typicalMany["COMPAREMANY four mulches in beds against bare soil"] as ManyTreatments;
  const behind = treatments.map((one) =>
    one.againstUsual === null
      ? one
      : { ...one, againstUsual: { ...one.againstUsual, verdict: "down-enough" as const } },
  );
  expect(mulches({ treatments: behind })).toEqual(decisionSentences("down-enough"));
});
