import { expect, it } from "vitest";
import { tallyPicksFunction } from "../../src/answers/tallyPicks";
import { found, given } from "../questions/range";

// What each column holds is tested through the worksheet function, in tests/functions.
const call = given({ plants: ["A1", null, "A2"], amounts: [4, 5, 6] });

it("has METHODS' parameters, show right after the required ones, and one of ours last", () => {
  expect(tallyPicksFunction.parameters.map(({ name }) => name)).toEqual([
    ...["plants", "dates", "amounts", "show", "treatments", "beds", "all_plants", "unit", "loss_notes"],
  ]);
});

it("a table by rows whose main value is the total; the rows left out come last and as a word of their own", () => {
  const { columns, own, answer } = tallyPicksFunction.shown(found(tallyPicksFunction.ask(call)), call);
  const table = columns?.();
  expect(table?.header[table.main ?? 0]).toBe("Total");
  expect(table?.rows.map(([name]) => name)).toEqual(["A1", "A2"]);
  expect(table?.last?.outputs).toHaveLength(1);
  expect(own.map(({ label, format, value }) => [label, format, value()])).toEqual([["left out", "count", 1]]);
  expect(answer).toBeNull();
});
