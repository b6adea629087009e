import { expect, it } from "vitest";
import { wrapped } from "../../../src/pane/tell/wrapped";

const within = (most: number) => (line: string) => line.length <= most;

it("breaks a text between words, each line as long as fits", () => {
  expect(wrapped("one two three four", within(9))).toEqual(["one two", "three", "four"]);
});

it("a word that never fits stands on a line of its own, and nothing is lost", () => {
  expect(wrapped("a courgette  b", within(5))).toEqual(["a", "courgette", "b"]);
  expect(wrapped("", within(5))).toEqual([]);
});
