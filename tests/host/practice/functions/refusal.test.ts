import { expect, it } from "vitest";
import { isRefusal } from "../../../../src/host/practice/functions/refusal";
import { standInFunctions } from "../../../../src/host/practice/functions/standInFunctions";

it("isRefusal knows an error with a code, whichever script it came from", () => {
  const { Error: Refused } = standInFunctions(new Map());
  expect(isRefusal(new Refused("#N/A"))).toBe(true);
  expect(isRefusal(Object.assign(new Error("no"), { code: "#VALUE!" }))).toBe(true);
  expect(isRefusal(new Error("no"))).toBe(false);
  expect(isRefusal({ code: "#N/A", message: "no" })).toBe(false);
});
