import { expect, it } from "vitest";
import { isRefusal } from "../../src/answers/desk";
import { theDesk } from "../../src/answers/theDesk";
import { range } from "../questions/range";

it("tells a refusal from an answer", () => {
  expect(isRefusal(theDesk.ask("UPDOWN", [range("usual", 0), range("new", 7)]))).toBe(true);
  expect(isRefusal(theDesk.ask("UPDOWN", [range("usual", 24), range("new", 72)]))).toBe(false);
});
