import { expect, it } from "vitest";
import { manyTrials } from "../../src/questions/manyTrials";
import { codes, found, given } from "./range";

const ask = (named: Parameters<typeof given>[0]) => found(manyTrials(given(named)));

it("each row keeps its name, its change and its place", () => {
  const { trials, rowIs } = ask({
    usual_averages: ["Bare", 2, 4],
    new_averages: ["Straw", 3, 4],
    names: ["Crop", "leeks", "chard"],
  });
  expect(rowIs).toBe("crop");
  expect(trials).toMatchObject([
    { name: "leeks", change: 0.5, place: { cell: "B3" } },
    { name: "chard", change: 0, place: { cell: "B4" } },
  ]);
});

it("a tie is neither ahead nor behind", () => {
  expect(ask({ usual_averages: [2, 4, 5], new_averages: [3, 4, 4] })).toMatchObject({ ahead: 1, behind: 1 });
});

it("empty rows are no trials, and nothing is said of them", () => {
  const { trials, leftOut } = ask({ usual_averages: [2, null, 4], new_averages: [3, null, 5] });
  expect([trials.length, leftOut.length]).toEqual([2, 0]);
});

it("several trials take the gain as alike in all; one is one place and season", () => {
  expect(codes(ask({ usual_averages: [2, 4], new_averages: [3, 5] }).cautions())).toEqual(["C39"]);
  expect(codes(ask({ usual_averages: [2], new_averages: [3] }).cautions())).toEqual(["C12"]);
  expect(codes(ask({ usual_averages: [2, 4, 0], new_averages: [3, 5, 1] }).cautions())).toEqual(["C39", "C38"]);
});

it("many crops are still one place and season", () => {
  const crops = ask({ usual_averages: ["Bare", 2, 4], new_averages: ["Straw", 3, 5], names: ["Crop", "a", "b"] });
  expect(codes(crops.cautions())).toEqual(["C39", "C12"]);
});

it("units must agree", () => {
  const unlike = manyTrials(given({ usual_averages: ["Bare (kg)", 2, 3], new_averages: ["Straw (cm)", 3, 4] }));
  expect(unlike).toMatchObject({ problem: "units-differ" });
});

it("trials that all gave the very same change have no answer; one trial is too few for one", () => {
  expect(ask({ usual_averages: [10, 20, 30], new_averages: [11, 22, 33] })).toMatchObject({
    verdict: "none",
    changeRange: { low: { absent: "all-equal" } },
  });
  expect(ask({ usual_averages: [10], new_averages: [11] }).verdict).toBe("few");
});
