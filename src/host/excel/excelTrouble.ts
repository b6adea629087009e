import type { SheetTrouble } from "../sheet";

/** Excel's error codes (its reference, Excel.ErrorCodes) as the port's troubles; any other code reads as "unreadable". */
const troubles: Readonly<Record<string, SheetTrouble["trouble"]>> = {
  InvalidOperationInCellEditMode: "editing",
  InvalidSelection: "not-cells",
  ItemNotFound: "no-such-range",
  InvalidReference: "no-such-range",
  InvalidArgument: "no-such-range",
  AccessDenied: "protected",
};

/** What went wrong in Excel, as the port promises it; a programmer's mistake is handed on as it is. */
export function excelTrouble(reason: unknown, where: string): unknown {
  if (!(reason instanceof OfficeExtension.Error)) return reason;
  const trouble: SheetTrouble = { trouble: troubles[reason.code] ?? "unreadable", where };
  return trouble;
}
