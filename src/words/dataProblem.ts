import type { Place } from "../nouns/place";
import type { Problem, Shape } from "../nouns/problem";
import { amountText } from "./amount";
import { blockSize } from "./argumentProblem";
import { counted } from "./counted";
import { placeNamed, placeText } from "./place";
import { plainNumber } from "./plainNumber";
import { sentenceStart } from "./sentenceStart";
import { shortLabel } from "./shortLabel";

/** Problems with what the cells hold. */
export type DataProblem = Extract<
  Problem,
  {
    problem:
      | "negative-amount"
      | "total-at-end"
      | "average-at-end"
      | "shapes-differ"
      | "ranges-swapped"
      | "units-differ"
      | "no-usable-plants"
      | "no-usable-trials"
      | "usual-zero"
      | "numbers-for-planted"
      | "planted-unclear"
      | "all-lost";
  }
>;

/** What is wrong with the cells, where, and how to mend it. */
export function dataProblemSentence(problem: DataProblem): string {
  switch (problem.problem) {
    case "negative-amount":
      return negativeAmount(problem.place, problem.given);
    case "total-at-end":
      return summaryRow("total", problem.place, problem.endBefore);
    case "average-at-end":
      return summaryRow("average", problem.place, problem.endBefore);
    case "shapes-differ":
      return shapesDiffer(problem.first, problem.second);
    case "ranges-swapped":
      return `The two ranges look swapped: ${problem.first} and ${problem.second}. Give them the other way round.`;
    case "units-differ":
      return unitsDiffer(problem);
    case "no-usable-plants":
      return `No usable plants in ${problem.where}. Check that it holds one number per plant.`;
    case "no-usable-trials":
      return `No row of ${problem.where} has two averages above 0. Give one row per season, place or crop.`;
    case "usual-zero":
      return `Usual is 0, so a percent is undefined; new is ${amountText(problem.tried)}. Give both amounts instead.`;
    case "numbers-for-planted":
      return numbersForPlanted(problem.numbers, problem.planted);
    case "planted-unclear":
      return `planted is “${shortLabel(problem.given)}”. Give the number of plants, or point to their labels.`;
    case "all-lost":
      return `All plants in ${problem.where} were lost, so there is no average. Count them as zero to get 0.`;
  }
}

function negativeAmount(place: Place, given: number): string {
  const here = `${sentenceStart(placeNamed(place))} holds ${plainNumber(given, 6)}`;
  return `${here}, but a harvest cannot be below zero. Correct it, or type “not weighed”.`;
}

function summaryRow(what: "total" | "average", place: Place, endBefore: Place): string {
  const above = place.cell === null ? "rows" : "cells";
  const found = `${sentenceStart(placeNamed(place))} is the ${what} of the ${above} above it.`;
  return `${found} End the range at ${placeText(endBefore)}.`;
}

function shapesDiffer(first: Shape, second: Shape): string {
  const alike = first.columns === second.columns;
  const size = ({ rows, columns }: Shape) => (alike ? counted(rows, "row") : blockSize(rows, columns));
  const sizes = `${first.argument} has ${size(first)}, but ${second.argument} has ${size(second)}`;
  return `${sizes}. Make both ranges match in size.`;
}

function unitsDiffer(problem: Extract<DataProblem, { problem: "units-differ" }>): string {
  const { first, firstUnit, second, secondUnit } = problem;
  return `${first} is in ${firstUnit}, but ${second} is in ${secondUnit}. Put both in one unit.`;
}

function numbersForPlanted(numbers: number, planted: number): string {
  const found = `${counted(numbers, "number")} for ${counted(planted, "plant")}.`;
  return `${found} Pick totals? Add them first. A plant not weighed? Type “not weighed”.`;
}
