import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readCell } from "../../src/ranges/readCell";

describe("readCell takes the host's wrappings off", () => {
  it.each([
    ["a number", 12.5, 12.5],
    ["a text", "12 g", "12 g"],
    ["TRUE", true, true],
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
    ["for the text that the sheet's own readings hand over", "#DIV/0!", "#DIV/0!"],
    ["for NaN", Number.NaN, "#NUM!"],
    ["for an infinity", Number.NEGATIVE_INFINITY, "#NUM!"],
    ["for a record that holds NaN", { type: "Double", basicValue: Number.NaN }, "#NUM!"],
  ])("%s", (_name, raw, error) => {
    expect(readCell(raw)).toEqual({ error });
  });
});

describe("readCell knows one empty cell", () => {
  it.each([[null], [undefined], [""], [{ type: "Empty", basicValue: "" }], [{ type: "String", basicValue: "" }]])(
    "%j",
    (raw) => {
      expect(readCell(raw)).toBeNull();
    },
  );
});

it("readCell turns −0 into 0, so that no “-0” is ever shown", () => {
  expect(Object.is(readCell(-0), 0)).toBe(true);
});

it.each([[{}], [{ type: "Double", basicValue: { deep: [1] } }], [[1, 2]], [Symbol("odd")], [() => 1]])(
  "readCell reads an odd thing as the unreadable text “?” (case %#)",
  (raw) => {
    expect(readCell(raw)).toBe("?");
  },
);

it("readCell never throws and never gives a number that is not finite", () => {
  fc.assert(
    fc.property(fc.anything(), (raw) => {
      const cell = readCell(raw);
      expect(typeof cell !== "number" || Number.isFinite(cell)).toBe(true);
    }),
  );
});
