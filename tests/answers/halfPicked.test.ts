import { expect, it } from "vitest";
import { halfPickedFunction } from "../../src/answers/halfPicked";
import { found, given } from "../questions/range";

// What each column holds is tested through the worksheet function, in tests/functions.
const call = given({ plants: ["A", "B"], dates: ["2023-07-01", "2023-07-02"], amounts: [4, 5] });

it("has METHODS' parameters, show right after the required ones; a plant's name stands for its day", () => {
  expect(halfPickedFunction.parameters.map(({ name }) => name)).toEqual([
    "plants",
    "dates",
    "amounts",
    "show",
    "start",
  ]);
  const { columns } = halfPickedFunction.shown(found(halfPickedFunction.ask(call)), call);
  const table = columns?.();
  expect(table?.header[table.main ?? 0]).toBe("Day");
});
