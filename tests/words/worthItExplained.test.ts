import { expect, it } from "vitest";
import { worthIt } from "../../src/questions/worthIt";
import { explainWorthIt } from "../../src/words/worthItExplained";
import { found, given } from "../questions/range";

const next = (named: Parameters<typeof given>[0]) => explainWorthIt(found(worthIt(given(named)))).next;

/** On average 4.5 and 4, so that half a unit is lost, in plants that differ far more than that. */
const someLost = { usual: [2, 3, 4, 5, 6, 7], new: [2, 3, 4, 5, 6, 4], price: 1 };

it.each([
  [-0.25, "less than the lost half", "No change on this evidence."],
  [-1, "more than the lost half", "Your choice: it saves money. It may be worth trying again."],
])("a cheaper way that may or may not pay, at %d saves %s", (extra_cost, _, sentence) => {
  expect(next({ ...someLost, extra_cost })).toContain(sentence);
});

it("tells the break-even without a percent where the usual gave nothing", () => {
  // 0.50 of cost at 2.50 a unit is a fifth of a unit.
  expect(next({ usual: [0, 0, 0], new: [1, 2, 3], price: 2.5, extra_cost: 0.5 })).toContain(
    "Break-even needs 0.2 more per plant.",
  );
});

it("tells the next planting without a range where there are only two averages", () => {
  // 1.2 more at 2.50 is 3.00, less 1.10 is 1.90 a plant, times 120.
  expect(next({ usual: 3, new: 4.2, price: 2.5, extra_cost: 1.1, next_plants: 120 })).toContain(
    "For 120 plants that makes 228.",
  );
});
