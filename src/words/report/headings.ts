import type { TellableFinding } from "../../nouns/report";
import type { TrialNotes } from "../../nouns/trialNotes";
import { listText } from "../list";
import { type Names, namesOf } from "../names";
import { sentenceStart } from "../sentenceStart";
import { shortLabel } from "../shortLabel";

/** "Straw against Bare soil: courgettes, Marlpit Corner, 2023"; "" without a finding. */
export function defaultTitle([finding]: readonly TellableFinding[], { crop, place, season }: TrialNotes): string {
  if (finding === undefined) return "";
  const where = [crop, place, season].map(shortLabel).filter((part) => part !== "");
  return [aboutOf(finding), where.join(", ")].filter((part) => part !== "").join(": ");
}

/** "Does Straw give more per plant than Bare soil?"; "" without a finding. */
export function defaultQuestion([finding]: readonly TellableFinding[]): string {
  if (finding === undefined) return "";
  const amount = lessIsWanted(finding) ? "less" : "more";
  switch (finding.finding) {
    case "many-treatments":
      if (finding.usual === null) return "Which of these ways differ?";
      return `Does any of these ways give ${amount} per plant than ${shortLabel(finding.usual)}?`;
    case "many-trials":
      return `Does ${ofPair(finding).tried} give ${amount} than ${ofPair(finding).usual}, over several ${finding.rowIs}s?`;
    case "worth-it":
      return `Does ${ofPair(finding).tried} pay for what it costs?`;
    default:
      return `Does ${ofPair(finding).tried} give ${amount} per plant than ${ofPair(finding).usual}?`;
  }
}

/** What a result is about: "Straw against Bare soil". */
export function aboutOf(finding: TellableFinding): string {
  if (finding.finding !== "many-treatments") {
    const { usual, tried } = ofPair(finding);
    return `${sentenceStart(tried)} against ${usual}`;
  }
  const others = finding.treatments.filter(({ isUsual }) => !isUsual);
  if (finding.usual === null) return `${others.length} ways side by side`;
  const named = listText(others.map(({ name }) => shortLabel(name)));
  const tried = named.length <= longestList ? named : `${others.length} ways`;
  return `${sentenceStart(tried)} against ${shortLabel(finding.usual)}`;
}

/** Names that make a longer list than so many characters are counted instead. */
const longestList = 48;

type OfPair = Exclude<TellableFinding, { finding: "many-treatments" }>;

/** What the two ways of a finding are called within a sentence. */
export function ofPair(finding: OfPair): Names {
  return "names" in finding
    ? namesOf(finding.names.usual, finding.names.tried)
    : namesOf(finding.usual.name, finding.tried.name);
}

function lessIsWanted(finding: TellableFinding): boolean {
  return "worthwhile" in finding && finding.worthwhile.lessWanted;
}
