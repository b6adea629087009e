import { type BaseValueObject, NumberValueObject, StringValueObject } from "@univerjs/engine-formula";
import { describe, expect, it } from "vitest";
import { gridFunction } from "../../../../src/host/practice/functions/gridFunction";
import { refusals } from "../../../../src/host/practice/functions/refusal";
import { standInFunctions, type WorksheetFunction } from "../../../../src/host/practice/functions/standInFunctions";

const text = { id: "UPDOWN", parameters: [{ name: "usual" }, { name: "new" }, { name: "show", optional: true }] };
const { Error: Refused, ErrorCode } = standInFunctions(new Map());

/** The function as it stands in cell C3 of "My beds". */
function inCell(worksheetFunction: WorksheetFunction) {
  const made = new (gridFunction(text, worksheetFunction))("FAIRBED.UPDOWN");
  made.setRefInfo("book", "sheet", 2, 2);
  made.setSheetsInfo({ sheetOrder: ["sheet"], sheetNameMap: { sheet: "My beds" } });
  return made;
}

/** What the cell holds after the call. */
function shown(made: ReturnType<typeof inCell>, ...given: BaseValueObject[]) {
  return (made.calculate(...given) as BaseValueObject).getValue();
}

describe("gridFunction", () => {
  it("fills up omitted arguments with null and hands the place over last", () => {
    let received: unknown[] = [];
    const made = inCell((...given) => {
      received = given;
      return [[1]];
    });
    expect(shown(made, NumberValueObject.create(24))).toBe(1);
    expect(received).toEqual([
      24,
      null,
      null,
      { address: "'My beds'!C3", parameterAddresses: [undefined, undefined, undefined], functionName: "UPDOWN" },
    ]);
  });

  it("shows a thrown refusal's code and remembers its sentence until the call answers", () => {
    const made = inCell((usual) => {
      if (usual === "none") throw new Refused(ErrorCode.notAvailable, "Usual is 0");
      return [[2]];
    });
    expect(shown(made, StringValueObject.create("none"))).toBe("#N/A");
    expect(refusals.get("'My beds'!C3 UPDOWN")).toBe("Usual is 0");
    expect(shown(made, NumberValueObject.create(1))).toBe(2);
    expect(refusals.has("'My beds'!C3 UPDOWN")).toBe(false);
  });

  it("shows a returned refusal like a thrown one", () => {
    expect(shown(inCell(() => new Refused(ErrorCode.invalidValue, "say how")))).toBe("#VALUE!");
    expect(refusals.get("'My beds'!C3 UPDOWN")).toBe("say how");
  });

  it("shows any other failure as #VALUE!", () => {
    const failed = inCell(() => {
      throw new TypeError("a slip of ours");
    });
    expect(shown(failed)).toBe("#VALUE!");
  });
});
