import { expect, it } from "vitest";
import { gridName } from "../../../../src/host/practice/functions/gridName";

it("gridName puts the namespace in front", () => {
  expect(gridName("COMPARETWO")).toBe("FAIRBED.COMPARETWO");
});
