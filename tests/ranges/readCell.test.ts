import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readCell } from "../../src/ranges/readCell";

describe("readCell takes the host's wrappings off", () => {
  it.each([
    ["a number", 12.5, 12.5],
    ["a text", "12 g", "12 g"],
    ["TRUE", true, true],
    ["a whole number of any size", 12n, 12],
    ["a text that starts like an error", "#3 bed", "#3 bed"],
    ["a double with a number format", { type: "Double", basicValue: 0.25, numberFormat: "0.0%" }, 0.25],
    ["a formatted number", { type: "FormattedNumber", basicType: "Double", basicValue: 3 }, 3],
    ["a text record", { type: "String", basicValue: "lost" }, "lost"],
    ["a boolean record", { type: "Boolean", basicValue: false }, false],
    ["an entity that shows a number", { type: "Entity", text: "3 kg", basicValue: 3 }, 3],
    [
      "an entity without a basic value",
      { type: "Entity", text: "Straw", basicType: "Error", basicValue: "#VALUE!" },
      "Straw",
    ],
  ])("%s", (_name, raw, cell) => {
    expect(readCell(raw)).toEqual(cell);
  });
});

describe("readCell gives an error cell", () => {
  it.each([
    ["for an error record", { type: "Error", basicValue: "#N/A", basicType: "Error" }, "#N/A"],
    ["for a CustomFunctions.Error", Object.assign(new Error("gone"), { code: "#N/A" }), "#N/A"],
    ["for one of our own error cells", { error: "#REF!" }, "#REF!"],
    ["for an error without a name", { type: "Error" }, "#VALUE!"],
    ["for an error whose name is none of a sheet's", { type: "Error", basicValue: "oops" }, "#VALUE!"],
    ["for an error code that is none of a sheet's", Object.assign(new Error("gone"), { code: "ENOENT" }), "#VALUE!"],
    ["for an entity that shows nothing", { type: "Entity", text: "", basicType: "Error", basicValue: "#N/A" }, "#N/A"],
    ["for the text that the sheet's own readings hand over", "#DIV/0!", "#DIV/0!"],
    ["for NaN", Number.NaN, "#NUM!"],
    ["for an infinity", Number.NEGATIVE_INFINITY, "#NUM!"],
    ["for a record that holds NaN", { type: "Double", basicValue: Number.NaN }, "#NUM!"],
  ])("%s", (_name, raw, error) => {
    expect(readCell(raw)).toEqual({ error });
  });
});

// Microsoft Learn, CustomFunctions.ErrorCode and Excel.ErrorCellValueType
it.each([
  "#N/A",
  "#VALUE!",
  "#REF!",
  "#DIV/0!",
  "#NUM!",
  "#NAME?",
  "#NULL!",
  "#SPILL!",
  "#CALC!",
  "#FIELD!",
  "#BLOCKED!",
  "#CONNECT!",
  "#UNKNOWN!",
  "#BUSY!",
  "#PYTHON!",
  "#EXTERNAL!",
  "#TIMEOUT!",
  "#GETTING_DATA",
])("readCell knows the text %s as an error", (error) => {
  expect(readCell(error)).toEqual({ error });
});

describe("readCell knows one empty cell", () => {
  it.each([
    [null],
    [undefined],
    [""],
    [{ type: "Empty" }],
    [{ type: "Empty", basicValue: "" }],
    [{ type: "String", basicValue: "" }],
    [{ type: "String", basicValue: "", text: "" }],
  ])("%j", (raw) => {
    expect(readCell(raw)).toBeNull();
  });
});

it("readCell turns −0 into 0, so that no “-0” is ever shown", () => {
  expect(Object.is(readCell(-0), 0)).toBe(true);
});

it.each([
  [{}],
  [{ type: "Double", basicValue: { deep: [1] } }],
  [{ type: "Double", basicValue: { type: "Double", basicValue: 5 } }],
  [{ type: "Entity", text: 7 }],
  [[1, 2]],
  [Symbol("odd")],
  [() => 1],
])("readCell reads an odd thing as the unreadable text “?” (case %#)", (raw) => {
  expect(readCell(raw)).toBe("?");
});

it("readCell never throws and never gives a number that is not finite", () => {
  fc.assert(
    fc.property(fc.anything(), (raw) => {
      const cell = readCell(raw);
      expect(typeof cell !== "number" || Number.isFinite(cell)).toBe(true);
    }),
  );
});
