import { expect, it } from "vitest";
import { leastSignificantDifference, treatmentF } from "../../src/methods/varianceTable";
import { near } from "../near";
import { manyCases, modelOf } from "./manyCases";

it("the rice trial of Gomez & Gomez (1984), p. 26: LSD 501.14, treatments F 2.168, beds F 5.862 (R)", () => {
  const model = modelOf(manyCases.find(({ name }) => name === "Gomez rice in beds") ?? expect.fail("no case"));
  near("LSD", leastSignificantDifference(model) ?? 0, 501.1364051, { relative: 1e-9 });
  near("treatments", treatmentF(model, model.squares.treatments).f, 2.16778, { absolute: 0.000005 });
  near("beds", treatmentF(model, model.squares.beds ?? expect.fail("no beds")).f, 5.86224, { absolute: 0.000005 });
});

it("unequal numbers have no one least significant difference", () => {
  const model = modelOf(manyCases.find(({ name }) => name === "unequal numbers") ?? expect.fail("no case"));
  expect(leastSignificantDifference(model)).toBeNull();
});
