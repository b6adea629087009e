import { describe, expect, it } from "vitest";
import { standInFunctions, type WorksheetFunction } from "../../../../src/host/practice/functions/standInFunctions";

describe("standInFunctions", () => {
  it("keeps every associated function under its id in capitals", () => {
    const kept = new Map<string, WorksheetFunction>();
    const door = () => 1;
    standInFunctions(kept).associate("upDown", door);
    expect([...kept]).toEqual([["UPDOWN", door]]);
  });

  it("has errors with a code and a sentence, and Excel's names for the codes", () => {
    const { Error: Refused, ErrorCode } = standInFunctions(new Map());
    const refused = new Refused(ErrorCode.notAvailable, "no usable plants");
    expect(refused).toBeInstanceOf(Error);
    expect(refused).toMatchObject({ code: "#N/A", message: "no usable plants" });
    expect(ErrorCode.invalidValue).toBe("#VALUE!");
  });
});
