import type { ManyTreatments } from "../nouns/findings/manyTreatments";
import type { Output, Outputs } from "../nouns/line";
import { verdictText } from "../words/verdict";
import { figure } from "./figure";

/** *show* "all pairs": the higher of each pair first. */
export function pairTable(found: ManyTreatments): Outputs {
  const rows = found
    .pairs()
    .map(({ higher, lower, difference, differenceRange, pValue, verdict }) => [
      `${higher} above ${lower}`,
      figure(difference),
      figure(differenceRange.low),
      figure(differenceRange.high),
      figure(pValue),
      verdictText(verdict),
    ]);
  return [["Pair", "Difference", "Low", "High", "p value", "Verdict"], ...rows];
}

/** *show* "difference": each treatment against the usual, in the sheet's unit. */
export function differenceTable({ treatments }: ManyTreatments): Outputs {
  const rows = treatments.flatMap(({ name, againstUsual }) =>
    againstUsual === null
      ? []
      : [
          [
            name,
            ...[againstUsual.difference, againstUsual.differenceRange.low, againstUsual.differenceRange.high].map(
              figure,
            ),
          ],
        ],
  );
  return [["Treatment", "Difference", "Low", "High"], ...rows];
}

/** *show* "anova": sums of squares, beds first. */
export function anovaTable({ sumsOfSquares }: ManyTreatments): Outputs {
  const header: readonly Output[] = ["Source", "df", "SS", "MS", "F", "p"];
  const table = sumsOfSquares();
  if (table === null) return [header, ["no table with own unevenness", "", "", "", "", ""]];
  const rows = table.lines.map(({ source, df, sumOfSquares, meanSquare, f, p }) => [
    source,
    df,
    sumOfSquares,
    ...[meanSquare, f, p].map((value) => (value === null || Number.isNaN(value) ? "" : value)),
  ]);
  const least = table.leastSignificantDifference;
  return [header, ...rows, ...(least === null ? [] : [["LSD", least, "", "", "", ""]])];
}

/** *show* "letters". */
export function lettersTable({ treatments }: ManyTreatments): Outputs {
  return [["Treatment", "Letters"], ...treatments.map(({ name, letters }) => [name, letters])];
}
