import { expect, it } from "vitest";
import { allLost } from "../../src/questions/allLost";
import { perPlant } from "../../src/questions/perPlant";
import { found, given } from "./range";

it("says where all plants were lost", () => {
  const call = given({ amounts: ["lost", "dead"] });
  expect(allLost(found(perPlant(call)), call)).toEqual({ problem: "all-lost", where: "B2:B3" });
});

it("has nothing to say where there is an average", () => {
  for (const call of [
    given({ amounts: ["lost", 4] }),
    given({ amounts: ["lost", "dead"], lost_plants: "count as zero" }),
  ]) {
    expect(allLost(found(perPlant(call)), call)).toBeNull();
  }
});
