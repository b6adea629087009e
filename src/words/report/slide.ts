import type { Report, ReportResult } from "../../nouns/report";
import { amountText } from "../amount";
import { counted } from "../counted";
import { splitSentences } from "./splitSentences";

/** The report for one slide: its title, the averages, the line to repeat, and place and season, each on a line. */
export function slide({ title, results, couldFool, safety }: Report): string {
  const lines = [
    title,
    ...results.flatMap((result) => [...result.bars.map(barLine(result)), ...result.say]),
    ...firstOf(couldFool.slice(-1)),
    ...firstOf(safety),
  ];
  return lines.filter((line) => line !== "").join("\n");
}

/** "Straw: 4350 g a plant (7 plants)" */
function barLine({ unit }: ReportResult): (bar: ReportResult["bars"][number]) => string {
  return ({ name, average, plants }) => `${name}: ${amountText(average, unit)} a plant (${counted(plants, "plant")})`;
}

function firstOf(texts: readonly string[]): readonly string[] {
  return texts.flatMap((text) => splitSentences(text).slice(0, 1));
}
