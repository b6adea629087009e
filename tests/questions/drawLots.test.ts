import { describe, expect, it } from "vitest";
import { drawLots } from "../../src/questions/drawLots";
import reference from "../reference/drawLots.json";
import { codes, found, given } from "./range";

describe("spots, beds, treatments and labels are R's", () => {
  it.each(reference.cases.plans)("number $number", ({ treatments, each, number, beds, order, labels }) => {
    const asked = { treatments, plants_each: each, draw_number: number, ...(beds === null ? {} : { beds }) };
    const { spots } = found(drawLots(given(asked)));
    expect(spots.map(({ treatment }) => treatment)).toEqual(order);
    expect(spots.map(({ label }) => label)).toEqual(labels);
    const named = spots.map(({ bed, spot }) => (bed === null ? `P${spot}` : `B${bed}-${spot}`));
    expect(named).toEqual(labels);
  });
});

it("'one each' is as many beds as plants of each", () => {
  const asked = { treatments: 3, plants_each: 5, draw_number: 9 };
  const { beds, spots } = found(drawLots(given({ ...asked, beds: "one each" })));
  expect(beds).toBe(5);
  expect(spots).toEqual(found(drawLots(given({ ...asked, beds: 5 }))).spots);
});

it("without a number nothing is drawn, but the plan is read", () => {
  const plan = found(drawLots(given({ treatments: 2, plants_each: 4 })));
  expect(plan).toMatchObject({ drawNumber: null, spots: [], plantsEach: 4, treatments: ["A", "B"] });
});

it("fewer than four each cannot settle anything", () => {
  expect(codes(found(drawLots(given({ treatments: 2, plants_each: 3, draw_number: 1 }))).cautions())).toEqual([
    "C28",
    "C12",
  ]);
  expect(codes(found(drawLots(given({ treatments: 2, plants_each: 4, draw_number: 1 }))).cautions())).toEqual(["C12"]);
});

it("refuses beds that do not hold as many of each, more than 2 000 spots, and no plants", () => {
  const asked = { treatments: 2, draw_number: 1 };
  expect(drawLots(given({ ...asked, plants_each: 7, beds: 3 }))).toEqual({
    problem: "not-a-multiple",
    plants: 7,
    beds: 3,
  });
  expect(drawLots(given({ ...asked, plants_each: 1001 }))).toEqual({
    problem: "too-many-spots",
    spots: 2002,
    most: 2000,
  });
  expect(found(drawLots(given({ ...asked, plants_each: 1000 }))).spots).toHaveLength(2000);
  expect(drawLots(given({ ...asked, plants_each: 0 }))).toMatchObject({ problem: "not-whole", low: 1 });
  expect(drawLots(given(asked))).toEqual({ problem: "missing-argument", argument: "plants_each" });
});
