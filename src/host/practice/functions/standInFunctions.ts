/** A worksheet function as our functions file hands it to its host. */
export type WorksheetFunction = (...given: unknown[]) => unknown;

/** The codes of Excel's custom-functions runtime (Office add-in documentation, CustomFunctions.ErrorCode). */
const errorCodes = {
  invalidValue: "#VALUE!",
  notAvailable: "#N/A",
  divisionByZero: "#DIV/0!",
  invalidNumber: "#NUM!",
  nullReference: "#NULL!",
  invalidName: "#NAME?",
  invalidReference: "#REF!",
} as const;

/** A refusal as worksheet functions throw or return it: the cell's error code and a sentence. */
class FunctionError extends Error {
  readonly code: string;

  constructor(code: string, message = "") {
    super(message);
    this.name = "CustomFunctions.Error";
    this.code = code;
  }
}

/**
 * What stands in for Excel's `CustomFunctions` object while our functions file loads in the practice sheet.
 *
 * @param functions receives every associated function under its id in capitals
 */
export function standInFunctions(functions: Map<string, WorksheetFunction>) {
  return {
    associate(id: string, worksheetFunction: WorksheetFunction): void {
      functions.set(id.toUpperCase(), worksheetFunction);
    },
    Error: FunctionError,
    ErrorCode: errorCodes,
  };
}
