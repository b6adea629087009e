import type { TreatmentModel } from "../methods/treatmentModel";
import { leastSignificantDifference, treatmentF } from "../methods/varianceTable";
import type { SourceLine, SumsOfSquares } from "../nouns/findings/manyTreatments";

/** The table of sums of squares, beds first, and the least significant difference of a balanced trial. */
export function sumsOfSquares(model: TreatmentModel): SumsOfSquares {
  const { beds, treatments, residual } = model.squares;
  const tested = (source: "beds" | "treatments", of: typeof treatments): SourceLine => ({
    source,
    df: of.df,
    sumOfSquares: of.sumOfSquares,
    meanSquare: of.sumOfSquares / of.df,
    ...treatmentF(model, of),
  });
  return {
    lines: [
      ...(beds === null ? [] : [tested("beds", beds)]),
      tested("treatments", treatments),
      { source: "residual", ...residual, meanSquare: model.meanSquare, f: null, p: null },
    ],
    leastSignificantDifference: leastSignificantDifference(model),
  };
}
