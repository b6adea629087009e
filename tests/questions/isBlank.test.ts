import { expect, it } from "vitest";
import { isBlank } from "../../src/questions/isBlank";
import { sample } from "./range";

it("is so for an empty cell alone: not for a zero, a note, an error value, or a lost plant", () => {
  const { entries } = sample("usual", [4, null, "", 0, "forgot", { error: "#N/A" }, true, "lost", 5]);
  expect(entries.map(isBlank)).toEqual([false, true, true, false, false, false, false, false, false]);
});
