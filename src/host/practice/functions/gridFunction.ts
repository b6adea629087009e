import type { Ctor } from "@univerjs/core";
import {
  BaseFunction,
  type BaseReferenceObject,
  type BaseValueObject,
  type FunctionVariantType,
  serializeRangeWithSheet,
} from "@univerjs/engine-formula";
import type { FunctionText } from "./functionTexts";
import { givenArgument } from "./givenArgument";
import { gridError, gridResult } from "./gridResult";
import { isRefusal, refusals } from "./refusal";
import type { WorksheetFunction } from "./standInFunctions";

/** Where a call stands and where its arguments come from, in the shape of Excel's invocation object. */
interface Invocation {
  readonly address: string;
  readonly parameterAddresses: readonly (string | undefined)[];
  readonly functionName: string;
}

/**
 * A worksheet function as a class of the grid's engine. Each argument arrives as in Excel (a block of cells or a
 * typed value, `null` where omitted), then the invocation object, always at the same place.
 */
export function gridFunction(text: FunctionText, worksheetFunction: WorksheetFunction): Ctor<BaseFunction> {
  return class extends BaseFunction {
    override needsReferenceObject = true;
    override needsSheetsInfo = true;

    override calculate(...given: FunctionVariantType[]): BaseValueObject {
      const invocation = this.invocation(given);
      try {
        const padded = text.parameters.map((_, at) => argumentAt(given, at));
        return this.answer(worksheetFunction(...padded, invocation), invocation);
      } catch (thrown) {
        return this.answer(thrown, invocation);
      }
    }

    private invocation(given: readonly FunctionVariantType[]): Invocation {
      const position = { startRow: this.row, endRow: this.row, startColumn: this.column, endColumn: this.column };
      return {
        address: serializeRangeWithSheet(this.sheetName(this.subUnitId ?? ""), position),
        parameterAddresses: text.parameters.map((_, at) => this.addressOf(given[at])),
        functionName: text.id,
      };
    }

    private addressOf(argument: FunctionVariantType | undefined): string | undefined {
      if (argument === undefined || !argument.isReferenceObject()) return undefined;
      const reference = argument as BaseReferenceObject;
      return serializeRangeWithSheet(this.sheetName(reference.getSheetId()), reference.getRangePosition());
    }

    private sheetName(sheetId: string): string {
      return this.getSheetsInfo().sheetNameMap[sheetId] ?? "";
    }

    private answer(result: unknown, invocation: Invocation): BaseValueObject {
      const call = `${invocation.address} ${text.id}`;
      refusals.delete(call);
      if (!(result instanceof Error)) return gridResult(result);
      refusals.set(call, result.message);
      return gridError(isRefusal(result) ? result.code : "#VALUE!");
    }
  };
}

function argumentAt(given: readonly FunctionVariantType[], at: number) {
  const argument = given[at];
  return argument === undefined ? null : givenArgument(argument);
}
