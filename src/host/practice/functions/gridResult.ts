import {
  ArrayValueObject,
  type BaseValueObject,
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  NumberValueObject,
  StringValueObject,
} from "@univerjs/engine-formula";
import { isRefusal } from "./refusal";

/** A number that brings its number format, as Excel's formatted results do. */
interface FormattedNumber {
  readonly type: "Double";
  readonly basicValue: number;
  readonly numberFormat?: string;
}

/**
 * A worksheet function's result as the engine shows it: a block spills, a block of one cell fills its own cell.
 * Anything that no cell can hold (NaN, an infinity, nothing at all) shows as `#VALUE!`: our functions never send it.
 */
export function gridResult(result: unknown): BaseValueObject {
  if (!Array.isArray(result)) return gridCell(result);
  const rows = result.map((row: unknown) => (Array.isArray(row) ? row.map(gridCell) : [gridCell(row)]));
  const width = Math.max(...rows.map((row) => row.length));
  const first = rows[0]?.[0];
  if (first === undefined) return gridError(ErrorType.VALUE);
  return rows.length === 1 && width === 1 ? first : block(rows, width);
}

/** A refusal as the engine shows it: its code. */
export function gridError(code: string): BaseValueObject {
  const known = Object.values(ErrorType).find((type) => type === code);
  return ErrorValueObject.create(known ?? ErrorType.VALUE);
}

function block(rows: BaseValueObject[][], columnCount: number): BaseValueObject {
  return ArrayValueObject.create({
    calculateValueList: rows,
    rowCount: rows.length,
    columnCount,
    unitId: "",
    sheetId: "",
    row: -1,
    column: -1,
  });
}

function gridCell(value: unknown): BaseValueObject {
  if (typeof value === "string") return StringValueObject.create(value);
  if (typeof value === "boolean") return BooleanValueObject.create(value);
  if (typeof value === "number" && Number.isFinite(value)) return NumberValueObject.create(value);
  if (isRefusal(value)) return gridError(value.code);
  if (isFormattedNumber(value) && Number.isFinite(value.basicValue))
    return NumberValueObject.create(value.basicValue, value.numberFormat ?? "");
  return gridError(ErrorType.VALUE);
}

function isFormattedNumber(value: unknown): value is FormattedNumber {
  return typeof value === "object" && value !== null && "type" in value && value.type === "Double";
}
