import { expect, it } from "vitest";
import { readLostPlants } from "../../src/questions/readLostPlants";
import { given } from "./range";

it("leaves out when nothing is typed", () => {
  expect(readLostPlants({})).toBe("leave out");
  expect(readLostPlants(given({ lost_plants: "" }))).toBe("leave out");
  expect(readLostPlants(given({ lost_plants: "COUNT as zero" }))).toBe("count as zero");
});

it("refuses another word", () => {
  expect(readLostPlants(given({ lost_plants: "zero" }))).toMatchObject({ problem: "unknown-choice", given: "zero" });
});
