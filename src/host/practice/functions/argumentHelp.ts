import { BooleanNumber } from "@univerjs/core";
import { FunctionType, type IFunctionInfo, type IFunctionParam } from "@univerjs/engine-formula";
import type { FunctionText, ParameterText } from "./functionTexts";
import { gridName } from "./gridName";

/** What the grid shows while a formula is typed: the function's description and its parameters. */
export function argumentHelp(text: FunctionText): IFunctionInfo {
  const description = text.description ?? "";
  return {
    functionName: gridName(text.id),
    functionType: FunctionType.User,
    description,
    abstract: description,
    functionParameter: text.parameters.map(parameterHelp),
  };
}

function parameterHelp(parameter: ParameterText): IFunctionParam {
  return {
    name: parameter.name,
    detail: parameter.description ?? "",
    example: parameter.dimensionality === "matrix" ? "B2:B9" : parameter.name,
    require: parameter.optional === true ? BooleanNumber.FALSE : BooleanNumber.TRUE,
    repeat: BooleanNumber.FALSE,
  };
}
