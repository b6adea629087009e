import { expect, it } from "vitest";
import { totalsOnly } from "../../src/questions/totalsOnly";
import { tellTotalsOnly } from "../../src/words/totalsOnly";
import { found, given } from "../questions/range";

it.each([
  ["usual", { usual_total: "forgot", new_total: 655 }],
  ["new", { usual_total: 412, new_total: "forgot" }],
  ["usual first, where both are", { usual_total: "forgot", new_total: "forgot" }],
])("tells which total is missing: the %s", (_, totals) => {
  const told = tellTotalsOnly(found(totalsOnly(given({ ...totals, usual_plants: 30, new_plants: 30 }))));
  expect(told.finding()).toBe("No answer: there is no number in B2.");
  expect(told.say()).toBe("We have no answer this season.");
});
