import { tokenize } from "@borgar/fx";
import { describe, expect, it } from "vitest";
import { readArgument } from "../../src/formula/argument";
import type { Argument } from "../../src/formula/call";

/** A text read as it stands between two commas of a call. */
function read(text: string): Argument {
  const tokens = tokenize(`=F(${text})`).slice(3, -1);
  return readArgument(tokens);
}

describe("readArgument reads", () => {
  it.each([
    "B2:B9",
    "$B$2:$B$9",
    "B:B",
    "3:5",
    "'My Sheet'!B2:B9",
    "'It''s, mine'!B2:B9",
    "[Other.xlsx]Sheet1!B2",
    "Plants[Amount]",
    "Plants[[#All],[Grams]:[Fruit]]",
    "straw",
    "B2#",
  ])("the reference %s", (text) => {
    expect(read(text)).toEqual({ kind: "reference", text });
  });

  it("a lone reference without the brackets around it", () => {
    expect(read("((B2:B9))")).toEqual({ kind: "reference", text: "B2:B9" });
  });

  it.each([
    ["3", 3],
    ["-2.5", -2.5],
    ["- 3", -3],
    ["--3", 3],
    ["1E-2", 0.01],
    ["10%", 0.1],
    ["-10 %", -0.1],
    ['"say"', "say"],
    ['"so-called ""straw"", wet"', 'so-called "straw", wet'],
    ['""', ""],
    ["TRUE", true],
    ["false", false],
    ["#N/A", { error: "#N/A" }],
    ["#DIV/0!", { error: "#DIV/0!" }],
  ])("the value %s", (text, cell) => {
    expect(read(text)).toEqual({ kind: "value", text, cell });
  });

  it("an array of values as a block", () => {
    const cells = [
      [1, -2],
      ["a;b", true],
    ];
    expect(read('{1,-2;"a;b",TRUE}')).toMatchObject({ kind: "block", cells });
  });

  it("nothing as omitted", () => {
    expect(readArgument([])).toEqual({ kind: "omitted", text: "" });
  });

  it.each([
    "B2:B9*2",
    "B2:B9 B3",
    "(B2:B3,B5:B6)",
    "OFFSET(B2,0,0,8)",
    "B2:INDEX(B:B,9)",
    "@B2:B9",
    "1+1",
    '"a"&"b"',
    "{1,2;3}",
    "{1,B2}",
  ])("the expression %s", (text) => {
    expect(read(text)).toEqual({ kind: "expression", text });
  });
});
