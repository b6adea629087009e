import type { Cell } from "../nouns/cell";

/** What stands in for a value that is no cell value at all: read as "not recorded", never as a heading. */
const ODD = "?";

/** Every error value a worksheet can show; the sheet's own readings hand them over as plain text. */
const ERRORS = new Set([
  "#N/A",
  "#VALUE!",
  "#REF!",
  "#DIV/0!",
  "#NUM!",
  "#NAME?",
  "#NULL!",
  "#SPILL!",
  "#CALC!",
  "#FIELD!",
  "#BLOCKED!",
  "#CONNECT!",
  "#UNKNOWN!",
  "#BUSY!",
  "#PYTHON!",
  "#EXTERNAL!",
  "#TIMEOUT!",
  "#GETTING_DATA",
]);

/**
 * One value as a host hands it over, without the host's wrappings.
 *
 * Takes plain values, `{ type, basicValue }` records (Double, FormattedNumber, Error, entities …) and
 * `CustomFunctions.Error` objects. An empty text is an empty cell; a number that is not finite is an error cell;
 * −0 is 0; an entity without a basic value is the text it shows. Anything else is the unreadable text "?".
 *
 * Source of the shapes: Microsoft Learn, "Custom functions and data types" and "Excel data types core concepts".
 */
export function readCell(raw: unknown): Cell {
  switch (typeof raw) {
    case "number":
      return readNumber(raw);
    case "string":
      return readText(raw);
    case "boolean":
      return raw;
    case "bigint":
      return readNumber(Number(raw));
    case "undefined":
      return null;
    default:
      return raw === null ? null : readWrapped(Object(raw));
  }
}

function readNumber(raw: number): Cell {
  if (!Number.isFinite(raw)) return { error: "#NUM!" };
  return raw === 0 ? 0 : raw;
}

function readText(raw: string): Cell {
  if (raw === "") return null;
  // a long log has a hundred thousand names, and nearly none starts like an error
  return raw.startsWith("#") && ERRORS.has(raw) ? { error: raw } : raw;
}

function readWrapped(raw: object): Cell {
  const { type, basicType, basicValue, code, error, text } = raw as Readonly<Record<string, unknown>>;
  if (type === "Empty") return null;
  if (type === "Error" || basicType === "Error") return shownText(text) ?? { error: errorName(basicValue) };
  if (typeof code === "string") return { error: errorName(code) };
  if (typeof error === "string") return { error: errorName(error) };
  const basic = isPlain(basicValue) ? readCell(basicValue) : null;
  return basic ?? shownText(text) ?? (basicValue === "" ? null : ODD);
}

function errorName(given: unknown): string {
  return typeof given === "string" && given.startsWith("#") ? given : "#VALUE!";
}

function shownText(text: unknown): string | null {
  return typeof text === "string" && text !== "" ? text : null;
}

function isPlain(value: unknown): boolean {
  return typeof value === "number" || typeof value === "string" || typeof value === "boolean";
}
