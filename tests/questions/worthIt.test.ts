import { expect, it } from "vitest";
import { compareTwo } from "../../src/questions/compareTwo";
import { worthIt } from "../../src/questions/worthIt";
import { codes, found, given } from "./range";

const plants = { usual: [2, 3, 4, 3], new: [4, 5, 6, 5], price: 2, extra_cost: 1 };
const ask = (more: Parameters<typeof given>[0] = {}) => found(worthIt(given({ ...plants, ...more })));

it("prices taken as certain, and place and season, are always to look out for", () => {
  expect(codes(ask().cautions())).toEqual(["C25", "C12"]);
});

it("what was read into the amounts is told", () => {
  expect(codes(ask({ new: [4, 5, "6 kg", 5] }).cautions())).toEqual(["C25", "C14", "C12"]);
});

it("few plants, an odd one and lost ones are told as in any comparison", () => {
  expect(codes(ask({ usual: [2, 3, 4] }).cautions())).toContain("C01");
  expect(codes(ask({ usual: [2, 3, 4, 3], new: [4, 5, 6, 50] }).cautions())).toContain("C06");
  expect(codes(ask({ usual: [2, 3, 4, "lost", 3] }).cautions())).toContain("C03");
  expect(codes(ask({ usual: 3, new: 4 }).cautions())).toEqual(["C25", "C12"]);
});

it("six pairs are enough, five are few", () => {
  const pairs = (n: number) => ({ usual: [3, 4, 5, 4, 3, 5].slice(0, n), new: [5, 5, 6, 7, 4, 8].slice(0, n) });
  expect(codes(ask({ ...pairs(6), how: "pairs" }).cautions())).not.toContain("C01");
  expect(codes(ask({ ...pairs(5), how: "pairs" }).cautions())).toContain("C01");
});

it("names and unit come from the headings", () => {
  const named = ask({ usual: ["Bare soil (kg)", 2, 3], new: ["Straw (kg)", 4, 5] });
  expect(named).toMatchObject({ names: { usual: "Bare soil", tried: "Straw" }, unit: "kg" });
});

it("a unit above one of the two columns is that of both", () => {
  expect(ask({ usual: ["Bare soil (kg)", 2, 3], new: ["Straw", 4, 5] }).unit).toBe("kg");
  expect(ask({ usual: ["Bare soil", 2, 3], new: ["Straw (kg)", 4, 5] }).unit).toBe("kg");
});

it.each([
  [{ price: null }, { problem: "missing-argument", argument: "price" }],
  [{ price: "cheap" }, { problem: "not-a-number", argument: "price", given: "cheap" }],
  [{ price: 0 }, { problem: "price-not-above-zero", given: 0 }],
  [{ price: -2 }, { problem: "price-not-above-zero", given: -2 }],
  [{ extra_cost: null }, { problem: "missing-argument", argument: "extra_cost" }],
  [{ extra_cost: "little" }, { problem: "not-a-number", argument: "extra_cost", given: "little" }],
  [{ how: "beds" }, { problem: "unknown-choice", argument: "how", given: "beds", allowed: ["separate", "pairs"] }],
  [{ next_plants: 0 }, { problem: "not-whole", argument: "next_plants", given: 0, low: 1, high: null }],
  [{ next_plants: 2.5 }, { problem: "not-whole", argument: "next_plants", given: 2.5, low: 1, high: null }],
])("%j is refused, and the argument named", (wrong, problem) => {
  expect(worthIt(given({ ...plants, ...wrong }))).toEqual(problem);
});

it.each([
  [[3], [4, 5]],
  [[3, 4], [5]],
])("one plant beside two has no range, so only the averages speak: %j, %j", (usual, tried) => {
  const alone = ask({ usual, new: tried });
  expect(alone).toMatchObject({ finding: "worth-it", single: false, verdict: "pays-on-averages" });
  expect(alone.leftRange.low).toEqual({ absent: "one-plant" });
});

it("averages that pay the cost and leave nothing do not pay", () => {
  // 2 × (4 − 3) − 2 = 0
  expect(ask({ usual: 3, new: 4, price: 2, extra_cost: 2 })).toMatchObject({
    left: 0,
    verdict: "does-not-pay-on-averages",
  });
});

it("pays at a cost below the whole range, does not above it, and may or may not from end to end", () => {
  // at a price of 1 without a cost, what is left is the extra harvest itself
  const { low, high } = ask({ price: 1, extra_cost: 0 }).leftRange;
  const verdicts = [Number(low) - 0.01, Number(low), Number(high), Number(high) + 0.01].map(
    (cost) => ask({ price: 1, extra_cost: cost }).verdict,
  );
  expect(verdicts).toEqual(["pays", "may-or-may-not", "may-or-may-not", "does-not-pay"]);
});

it("where the usual bore nothing, no percentage breaks even", () => {
  expect(ask({ usual: [0, 0, 0] }).breakEvenChange).toEqual({ absent: "usual-not-above-zero" });
});

it("the harvest's own verdict is COMPARETWO's at 10 %, with its caps for few plants and pairs", () => {
  for (const how of ["separate", "pairs"]) {
    for (const count of [1, 2, 3, 4, 5, 6, 8]) {
      const usual = [10, 12, 11, 9, 10, 12, 11, 10].slice(0, count);
      const tried = [15, 18, 16, 14, 16, 17, 15, 16].slice(0, count);
      const compared = found(compareTwo(given({ usual, new: tried, how })));
      expect(ask({ usual, new: tried, how }).harvest, `${count} ${how}`).toBe(compared.verdict);
    }
  }
  expect(ask({ usual: [0, 0, 0], new: [1, 2, 3] }).harvest).toBe("none");
});
