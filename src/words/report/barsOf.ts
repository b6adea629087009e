import type { TotalFound } from "../../nouns/findings/totalsOnly";
import type { Group } from "../../nouns/findings/twoTreatments";
import { isKnown, type Known } from "../../nouns/known";
import type { ReportBar, TellableFinding } from "../../nouns/report";
import { sentenceStart } from "../sentenceStart";
import { shortLabel } from "../shortLabel";
import { ofPair } from "./headings";

/** The averages per plant as bars, the usual first; none where one of them is missing, or the result has none. */
export function barsOf(finding: TellableFinding): readonly ReportBar[] {
  switch (finding.finding) {
    case "two-treatments":
      return both(finding, ofGroup(finding.usual), ofGroup(finding.tried));
    case "totals-only":
      return both(finding, ofTotal(finding.usual), ofTotal(finding.tried));
    case "up-down":
    case "worth-it":
      return both(
        finding,
        { average: finding.usualMean, plants: finding.usualPlants },
        { average: finding.triedMean, plants: finding.triedPlants },
      );
    case "many-treatments": {
      const usualFirst = finding.treatments.toSorted((one, other) => Number(other.isUsual) - Number(one.isUsual));
      return allOrNone(
        usualFirst.map(({ name, mean, meanBedsRemoved, plants, isUsual }) =>
          bar(shortLabel(name), { average: meanBedsRemoved ?? mean, plants: plants.length }, isUsual),
        ),
      );
    }
    case "many-trials":
      return [];
  }
}

interface Height {
  readonly average: Known;
  readonly plants: number;
}

function ofGroup({ mean, plants }: Group): Height {
  return { average: mean, plants: plants.length };
}

function ofTotal({ perPlant, plants }: TotalFound): Height {
  return { average: perPlant, plants };
}

function both(finding: Parameters<typeof ofPair>[0], usual: Height, tried: Height): readonly ReportBar[] {
  const names = ofPair(finding);
  return allOrNone([bar(names.usual, usual, true), bar(names.tried, tried, false)]);
}

function bar(name: string, { average, plants }: Height, usual: boolean): ReportBar | null {
  return isKnown(average) && Number.isFinite(average) ? { name: sentenceStart(name), average, plants, usual } : null;
}

function allOrNone(bars: readonly (ReportBar | null)[]): readonly ReportBar[] {
  const known = bars.filter((one) => one !== null);
  return known.length === bars.length ? known : [];
}
