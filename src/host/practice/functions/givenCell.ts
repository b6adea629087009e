import type { Nullable } from "@univerjs/core";
import type { BaseValueObject, ErrorValueObject } from "@univerjs/engine-formula";

/** An error cell in the shape in which Excel hands it to a custom function. */
export interface GivenError {
  readonly type: "Error";
  readonly basicValue: string;
  readonly errorType: string;
}

/** One cell as a worksheet function receives it; `null` is an empty cell, never 0. */
export type GivenCell = number | string | boolean | null | GivenError;

/** Names of Excel.ErrorCellValueType by the code shown in a cell. */
const errorTypes: Readonly<Record<string, string>> = {
  "#N/A": "NotAvailable",
  "#VALUE!": "Value",
  "#DIV/0!": "Div0",
  "#NUM!": "Num",
  "#NAME?": "Name",
  "#REF!": "Ref",
  "#NULL!": "Null",
  "#SPILL!": "Spill",
  "#CALC!": "Calc",
};

/** The engine's value of one cell as a worksheet function receives it. */
export function givenCell(value: Nullable<BaseValueObject>): GivenCell {
  if (value === null || value === undefined || value.isNull()) return null;
  if (value.isError()) return givenError((value as ErrorValueObject).getErrorType());
  return value.getValue();
}

function givenError(code: string): GivenError {
  return { type: "Error", basicValue: code, errorType: errorTypes[code] ?? "Value" };
}
