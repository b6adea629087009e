import type {
  ArrayValueObject,
  BaseReferenceObject,
  BaseValueObject,
  FunctionVariantType,
} from "@univerjs/engine-formula";
import { type GivenCell, givenCell } from "./givenCell";

/** One argument as a worksheet function receives it: a block for a reference or array, else the typed value. */
export type GivenArgument = GivenCell | GivenCell[][];

/** The engine's argument as a worksheet function receives it. */
export function givenArgument(argument: FunctionVariantType): GivenArgument {
  if (argument.isReferenceObject()) return referenceCells(argument as BaseReferenceObject);
  if (argument.isArray()) return arrayCells(argument as ArrayValueObject);
  return givenCell(argument as BaseValueObject);
}

function referenceCells(reference: BaseReferenceObject): GivenCell[][] {
  const { startRow, startColumn } = reference.getRangePosition();
  const rows: GivenCell[][] = [];
  reference.iterator((value, row, column) => {
    const cells = rows[row - startRow] ?? [];
    rows[row - startRow] = cells;
    cells[column - startColumn] = givenCell(value);
    return true;
  });
  return rows;
}

function arrayCells(array: ArrayValueObject): GivenCell[][] {
  return array.getArrayValue().map((row) => Array.from(row, givenCell));
}
