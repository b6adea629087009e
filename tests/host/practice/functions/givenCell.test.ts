import {
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  NullValueObject,
  NumberValueObject,
  StringValueObject,
} from "@univerjs/engine-formula";
import { expect, it } from "vitest";
import { givenCell } from "../../../../src/host/practice/functions/givenCell";

it.each([
  ["a number", NumberValueObject.create(2.5), 2.5],
  ["a zero", NumberValueObject.create(0), 0],
  ["a formatted number", NumberValueObject.create(0.441, "0.0%"), 0.441],
  ["a text", StringValueObject.create("lost (slugs)"), "lost (slugs)"],
  ["a formula's empty text", StringValueObject.create(""), ""],
  ["FALSE", BooleanValueObject.create(false), false],
  ["an empty cell", NullValueObject.create(), null],
  ["a cell never filled", null, null],
  ["no value at all", undefined, null],
])("givenCell hands over %s", (_what, value, expected) => {
  expect(givenCell(value)).toBe(expected);
});

it.each([
  [ErrorType.NA, "NotAvailable"],
  [ErrorType.VALUE, "Value"],
  [ErrorType.DIV_BY_ZERO, "Div0"],
  [ErrorType.CYCLE, "Value"],
])("givenCell hands %s over in Excel's shape", (code, errorType) => {
  expect(givenCell(ErrorValueObject.create(code))).toEqual({ type: "Error", basicValue: code, errorType });
});
