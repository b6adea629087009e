import type { Problem } from "../nouns/problem";
import { counted } from "./counted";
import { listText } from "./list";
import { plainNumber } from "./plainNumber";
import { shortLabel } from "./shortLabel";

/** Problems with an argument itself, before any data are read. */
export type ArgumentProblem = Extract<
  Problem,
  {
    problem:
      | "missing-argument"
      | "unknown-show"
      | "show-elsewhere"
      | "unknown-choice"
      | "one-cell-wanted"
      | "not-a-number"
      | "not-whole"
      | "percent-as-points"
      | "percent-outside"
      | "unknown-treatment"
      | "price-not-above-zero";
  }
>;

/** What is wrong with an argument, and what to type instead. */
export function argumentProblemSentence(problem: ArgumentProblem): string {
  switch (problem.problem) {
    case "missing-argument":
      return `Nothing was given for ${problem.argument}. Point to its cells, or type a value.`;
    case "unknown-show":
      return `${quoted(problem.given)} cannot be shown here. These can: ${problem.allowed.join("; ")}.`;
    case "show-elsewhere":
      return showElsewhere(problem.given, problem.argument, problem.placesOn);
    case "unknown-choice":
      return `${problem.argument} cannot be ${quoted(problem.given)}. Type ${choices(problem.allowed)}.`;
    case "one-cell-wanted":
      return oneCellWanted(problem.argument, blockSize(problem.rows, problem.columns));
    case "not-a-number":
      return `${problem.argument} is ${quoted(problem.given)}, which is not a number. Type a number, or point to one.`;
    case "not-whole":
      return notWhole(problem.argument, problem.given, bounds(problem.low, problem.high));
    case "percent-as-points":
      return percentAsPoints(problem.argument, problem.given);
    case "percent-outside":
      return percentOutside(problem.argument, problem.given, [problem.low, problem.high]);
    case "unknown-treatment":
      return unknownTreatment(problem.given, problem.names);
    case "price-not-above-zero":
      return `price is ${plainNumber(problem.given, 6)}. Give what one unit of the harvest sells for, above 0.`;
  }
}

/** "8 rows and 2 columns", for sentences about shapes. */
export function blockSize(rows: number, columns: number): string {
  return `${counted(rows, "row")} and ${counted(columns, "column")}`;
}

function quoted(given: string): string {
  return `“${shortLabel(given)}”`;
}

function choices(allowed: readonly string[]): string {
  return listText(allowed.map(quoted), "or");
}

const kindOfWord: Readonly<Record<string, string>> = {
  how: "a way to compare",
  lost_plants: "a rule for lost plants",
  beds: "a way to lay out beds",
  direction: "a direction",
};

const placeWords = ["", "one place", "two places", "three places", "four places", "five places", "six places"];

function showElsewhere(given: string, argument: string, placesOn: number): string {
  const kind = kindOfWord[argument] ?? `a word for ${argument}`;
  return `${quoted(given)} is ${kind}; it goes ${placeWords[placesOn] ?? `${placesOn} places`} further on.`;
}

function oneCellWanted(argument: string, size: string): string {
  return `${argument} takes one cell, but got ${size}. Point to one cell.`;
}

function notWhole(argument: string, given: number, within: string): string {
  return `${argument} is ${plainNumber(given, 6)}. Give a whole number${within}.`;
}

function percentOutside(argument: string, given: number, [low, high]: readonly [number, number]): string {
  return `${argument} is ${exact(given)}. Give a percent ${between(argument, exact(low), exact(high))}.`;
}

/** Losses and confidence may be as low as their bound; everywhere else both ends are out of bounds. */
function between(argument: string, low: string, high: string): string {
  return argument === "losses" || argument === "confidence"
    ? `from ${low} to below ${high}`
    : `above ${low} and below ${high}`;
}

function unknownTreatment(given: string, names: readonly string[]): string {
  return `No treatment is called ${quoted(given)}. The names are: ${names.map(shortLabel).join(", ")}.`;
}

function bounds(low: number, high: number | null): string {
  return high === null ? `, ${low} or more` : ` from ${low} to ${high}`;
}

/** What is typed back is written with a plain hyphen, as a sheet wants it. */
function percentAsPoints(argument: string, given: number): string {
  const typed = plainNumber(given, 6).replace("−", "-");
  const fraction = plainNumber(given / 100, 8).replace("−", "-");
  return `${argument} is ${plainNumber(given, 6)}, which would mean ${exact(given)}. Type ${typed}% (or ${fraction}).`;
}

function exact(fraction: number): string {
  return `${plainNumber(fraction * 100, 4)} %`;
}
