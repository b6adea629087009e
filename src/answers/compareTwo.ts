import type { TwoTreatments } from "../nouns/findings/twoTreatments";
import type { Line } from "../nouns/line";
import { compareTwo } from "../questions/compareTwo";
import { cautionTexts } from "../words/cautionTexts";
import { methodText } from "../words/method";
import { placeText } from "../words/place";
import { verdictText } from "../words/verdict";
import { line } from "./figure";
import type { WorksheetFunction } from "./worksheetFunction";

/** COMPARETWO: two treatments, side by side. */
export const compareTwoFunction: WorksheetFunction<TwoTreatments> = {
  id: "COMPARETWO",
  parameters: [
    { name: "usual", optional: false },
    { name: "new", optional: false },
    { name: "show", optional: true },
    { name: "how", optional: true },
    { name: "worthwhile", optional: true },
    { name: "confidence", optional: true },
    { name: "lost_plants", optional: true },
  ],
  choices: { how: ["separate", "pairs", "beds"], lost_plants: ["leave out", "count as zero"] },
  ask: compareTwo,
  shown: (found) => ({
    answer: () => headline(found),
    lines: [...measured(found), ...compared(found), ...luck(found), ...closing(found)],
    columns: null,
    own: [],
  }),
};

/** The verdict; where a treatment has no plants, also where. */
function headline({ verdict, nothingIn }: TwoTreatments): string {
  const text = verdictText(verdict);
  return nothingIn === null ? text : `${text}: no usable plants in ${nothingIn}`;
}

function measured(found: TwoTreatments): readonly Line[] {
  const { usual, tried } = found;
  return [
    line("Verdict", "text", () => headline(found)),
    line("Average, usual", "amount", () => usual.mean),
    line("Average, new", "amount", () => tried.mean),
    line("Plants, usual", "count", () => usual.plants.length),
    line("Plants, new", "count", () => tried.plants.length),
    line("Lost, usual", "count", () => usual.lost.length),
    line("Lost, new", "count", () => tried.lost.length),
    line("Loss p", "decimal", () => found.lossP()),
  ];
}

function compared(found: TwoTreatments): readonly Line[] {
  return [
    line("Difference", "amount", () => found.difference),
    line("Difference low", "amount", () => found.differenceRange.low),
    line("Difference high", "amount", () => found.differenceRange.high),
    line("Change", "percent", () => found.change),
    line("Change low", "percent", () => found.changeRange.low),
    line("Change high", "percent", () => found.changeRange.high),
    line("Times as much", "decimal", () => found.timesAsMuch),
  ];
}

function luck(found: TwoTreatments): readonly Line[] {
  return [
    line("t", "decimal", () => found.t),
    line("df", "decimal", () => found.df),
    line("p value", "decimal", () => found.pValue),
    line("Label-swap p", "decimal", () => found.labelSwap()?.p ?? { absent: "no-usable-plants" }),
    line("Unevenness, usual", "percent", () => found.usual.unevenness),
    line("Unevenness, new", "percent", () => found.tried.unevenness),
  ];
}

function closing(found: TwoTreatments): readonly Line[] {
  return [
    line("One plant decides", "text", () => {
      const plant = found.onePlantDecides();
      return plant === null ? "no" : placeText(plant);
    }),
    line("Method", "text", () => methodText(found)),
    line("Cautions", "text", () => cautionTexts(found).join(" ")),
  ];
}
