import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { findCalls } from "../../src/formula/findCalls";

/** The arguments of the first call found. */
function argumentsOf(formula: string) {
  return findCalls(formula)[0]?.arguments;
}

describe("findCalls finds our calls", () => {
  it("in any letter case, with the stored prefix too", () => {
    expect(findCalls("=fairbed.UpDown(A1,B1)").map(({ id }) => id)).toEqual(["UPDOWN"]);
    expect(findCalls("=_xlfn.FAIRBED.UPDOWN(A1,B1)").map(({ id }) => id)).toEqual(["UPDOWN"]);
  });

  it("within other functions, the outer before the inner, then from left to right", () => {
    const formula = "=IF(A1>2,FAIRBED.PLANTSNEEDED(30%,FAIRBED.UNEVENNESS(B2:B9)),FAIRBED.UPDOWN(A1,B1))";
    expect(findCalls(formula).map(({ text }) => text)).toEqual([
      "FAIRBED.PLANTSNEEDED(30%,FAIRBED.UNEVENNESS(B2:B9))",
      "FAIRBED.UNEVENNESS(B2:B9)",
      "FAIRBED.UPDOWN(A1,B1)",
    ]);
  });

  it.each(["", "12", "=SUM(A1:A3)", '="FAIRBED.UPDOWN(A1,B1)"', "=OTHER.UPDOWN(A1)", "=XFAIRBED.UPDOWN(A1)"])(
    "none in %s",
    (formula) => expect(findCalls(formula)).toEqual([]),
  );

  it("of a broken formula those that are whole", () => {
    const formula = "=FAIRBED.PLANTSNEEDED(30%,FAIRBED.UNEVENNESS(B2:B9),";
    expect(findCalls(formula).map(({ id }) => id)).toEqual(["UNEVENNESS"]);
  });

  it("and never throws, whatever the text", () => {
    const pieces = [
      "FAIRBED.UPDOWN(",
      "(",
      ")",
      "{",
      "}",
      ",",
      ";",
      '"',
      "'",
      "A1:B2",
      "!",
      "-",
      "%",
      "#",
      "1",
      " ",
      "[",
      "]",
    ];
    const texts = fc
      .array(fc.constantFrom(...pieces), { maxLength: 40 })
      .map((parts) => `=FAIRBED.X(${parts.join("")}`);
    fc.assert(fc.property(texts, (text) => Array.isArray(findCalls(text))));
  });

  it("looks at no formula longer than Excel takes", () => {
    expect(findCalls(`=FAIRBED.UPDOWN(A1,"${"x".repeat(9000)}")`)).toEqual([]);
  });
});

describe("findCalls tells arguments apart", () => {
  it("nothing between commas is omitted, and nothing at all is no argument", () => {
    const omitted = { kind: "omitted", text: "" };
    expect(argumentsOf("=FAIRBED.UPDOWN(A1, ,)")).toEqual([{ kind: "reference", text: "A1" }, omitted, omitted]);
    expect(argumentsOf("=FAIRBED.UPDOWN( )")).toEqual([]);
  });

  it("commas inside brackets and arrays belong to their argument", () => {
    expect(argumentsOf("=FAIRBED.UPDOWN(MAX(A1,B1),{1,2})")?.map(({ text }) => text)).toEqual(["MAX(A1,B1)", "{1,2}"]);
  });

  it("our own calls are calls", () => {
    const [, nested] = argumentsOf('=FAIRBED.PLANTSNEEDED(30%, FAIRBED.UNEVENNESS(B2:B9,"plan with") )') ?? [];
    expect(nested).toMatchObject({
      kind: "call",
      call: { id: "UNEVENNESS", text: 'FAIRBED.UNEVENNESS(B2:B9,"plan with")' },
    });
  });

  it("one of ours within arithmetic is an expression", () => {
    const text = "1-FAIRBED.UPDOWN(A1,B1)";
    expect(argumentsOf(`=FAIRBED.PERPLANT(${text})`)).toEqual([{ kind: "expression", text }]);
  });
});
