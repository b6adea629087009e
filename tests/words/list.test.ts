import { expect, test } from "vitest";
import { listText } from "../../src/words/list";

test("listText joins as people do", () => {
  expect(listText([])).toBe("");
  expect(listText(["a"])).toBe("a");
  expect(listText(["a", "b"])).toBe("a and b");
  expect(listText(["a", "b", "c"], "or")).toBe("a, b or c");
});
