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

it("a row that lacks either average, or has none above 0, is left out and named", () => {
  const { trials, leftOut } = ask({
    usual_averages: [2, null, 4, 5, 6, "lost", 8, -9, 9],
    new_averages: [3, 4, null, 0, "forgot", 7, 9, 8, -8],
  });
  expect(trials.map(({ place }) => place.cell)).toEqual(["B2", "B8"]);
  expect(leftOut.map(({ cell }) => cell)).toEqual(["B3", "B4", "B5", "B6", "B7", "B9", "B10"]);
});

it.each<[string, Parameters<typeof given>[0], object, readonly (string | null)[]]>([
  ["both", { usual_averages: ["Bare", 2, 4], new_averages: ["Straw", 3, 4] }, { usual: "Bare", tried: "Straw" }, []],
  [
    "the usual alone",
    { usual_averages: ["Bare", 2, 4], new_averages: [null, 3, 4] },
    { usual: "Bare", tried: null },
    [],
  ],
  [
    "the new alone",
    { usual_averages: [null, 2, 4], new_averages: ["Straw", 3, 4] },
    { usual: null, tried: "Straw" },
    [],
  ],
  ["neither", { usual_averages: [1, 2, 4], new_averages: [1, 3, 4] }, { usual: null, tried: null }, ["Crop"]],
])("the names start below their heading where the averages do: headed %s", (_what, averages, names, first) => {
  const answer = ask({ ...averages, names: ["Crop", "leeks", "chard"] });
  expect(answer.names).toEqual(names);
  expect(answer.trials.map(({ name }) => name)).toEqual([...first, "leeks", "chard"]);
  expect(answer.rowIs).toBe(first.length === 0 ? "crop" : "trial");
});

it("averages of different length are refused", () => {
  expect(manyTrials(given({ usual_averages: [2, 4, 5], new_averages: [3, 5] }))).toMatchObject({
    problem: "shapes-differ",
  });
});

it("what was read into an average is told", () => {
  expect(ask({ usual_averages: [2, "~4"], new_averages: [3, "5*"] }).cautions()).toContainEqual({
    caution: "C14",
    count: 2,
  });
});

// by hand: the change is told from the log ratios r and s as (r + s) / 2 ± 12.7 |r - s| / 2, Student's t with 1 degree
it.each<[string, readonly number[], string]>([
  ["all but doubled twice", [2, 2.0025], "leaning-up"],
  ["all but halved twice", [0.5, 0.5005], "leaning-down"],
  ["all but the same twice", [1, 1.001], "level"],
  ["half as much again and half as much", [1.5, 0.5], "open"],
])("two trials lean at most: %s", (_what, ratios, verdict) => {
  const usual_averages = [40, 60];
  const new_averages = usual_averages.map((usual, at) => usual * (ratios[at] ?? 1));
  expect(ask({ usual_averages, new_averages }).verdict).toBe(verdict);
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
