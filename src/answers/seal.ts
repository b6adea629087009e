import { problemCode } from "../cells/problemCode";
import { show, wholeTable } from "../cells/show";
import type { ForeignWord, Showable } from "../cells/showable";
import type { CellRange } from "../nouns/cellRange";
import type { Finding } from "../nouns/finding";
import { isProblem, type Problem } from "../nouns/problem";
import type { Given } from "../questions/given";
import { readShow } from "../questions/readShow";
import { cautionTexts } from "../words/cautionTexts";
import { cellWords } from "../words/cellWords";
import { problemSentence } from "../words/problem";
import { tell } from "../words/tell";
import type { Answer, Parameter, Refusal } from "./desk";
import type { WorksheetFunction } from "./worksheetFunction";

/** A worksheet function with its finding's type closed over, so that all can stand in one record. */
export interface Sealed {
  readonly id: string;
  readonly parameters: readonly Parameter[];
  readonly reply: (given: readonly (CellRange | null)[]) => Answer | Refusal;
}

/** Closes a function over its finding's type. */
export function seal<Found extends Finding>(fn: WorksheetFunction<Found>): Sealed {
  const foreign = foreignWords(fn);
  return { id: fn.id, parameters: fn.parameters, reply: (given) => reply(fn, foreign, given) };
}

/** A refusal as cell and pane show it. */
export function refusal(problem: Problem): Refusal {
  return { code: problemCode(problem), message: problemSentence(problem), problem };
}

function reply<Found extends Finding>(
  fn: WorksheetFunction<Found>,
  foreign: readonly ForeignWord[],
  given: readonly (CellRange | null)[],
): Answer | Refusal {
  const named = Object.fromEntries(fn.parameters.map(({ name }, at) => [name, given[at] ?? null]));
  const missing = fn.parameters.find(({ name, optional }) => !optional && named[name] === null);
  if (missing !== undefined) return refusal({ problem: "missing-argument", argument: missing.name });
  const asked = readShow(named.show ?? null);
  if (asked !== null && typeof asked === "object") return refusal(asked);
  const found = fn.ask(named);
  if (isProblem(found)) return refusal(found);
  const showable = showableOf(fn, { found, foreign, given: named });
  const cell = show(showable, asked);
  if (isProblem(cell)) return refusal(cell);
  return {
    id: fn.id,
    finding: found,
    lines: [...showable.own, ...showable.lines],
    table: () => wholeTable(showable).outputs,
    cell: () => cell.outputs,
    formats: () => cell.formats,
  };
}

/** What was found for a call's arguments. */
interface Asked<Found> {
  readonly found: Found;
  readonly given: Given;
  readonly foreign: readonly ForeignWord[];
}

function showableOf<Found extends Finding>(fn: WorksheetFunction<Found>, asked: Asked<Found>): Showable {
  const { found, foreign, given } = asked;
  const told = tell(found);
  return {
    words: () => cellWords(found),
    say: () => told.say() || told.finding(),
    cautions: () => cautionTexts(found).join(" "),
    foreign,
    ...fn.shown(found, given),
  };
}

function foreignWords<Found extends Finding>({
  parameters,
  choices,
}: WorksheetFunction<Found>): readonly ForeignWord[] {
  const showAt = parameters.findIndex(({ name }) => name === "show");
  return parameters.flatMap(({ name }, at) =>
    (choices[name] ?? []).map((word) => ({ word, argument: name, placesOn: at - showAt })),
  );
}
