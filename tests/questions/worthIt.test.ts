import { expect, it } from "vitest";
import { worthIt } from "../../src/questions/worthIt";
import { codes, found, given } from "./range";

const plants = { usual: [2, 3, 4, 3], new: [4, 5, 6, 5], price: 2, extra_cost: 1 };
const ask = (more: Parameters<typeof given>[0] = {}) => found(worthIt(given({ ...plants, ...more })));

it("prices taken as certain, and place and season, are always to look out for", () => {
  expect(codes(ask().cautions())).toEqual(["C25", "C12"]);
});

it("few plants, an odd one and lost ones are told as in any comparison", () => {
  expect(codes(ask({ usual: [2, 3, 4] }).cautions())).toContain("C01");
  expect(codes(ask({ usual: [2, 3, 4, 3], new: [4, 5, 6, 50] }).cautions())).toContain("C06");
  expect(codes(ask({ usual: [2, 3, 4, "lost", 3] }).cautions())).toContain("C03");
  expect(codes(ask({ usual: 3, new: 4 }).cautions())).not.toContain("C01");
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

it("one plant beside two has no range, so only the averages speak", () => {
  const alone = ask({ usual: [3], new: [4, 5] });
  expect(alone.verdict).toBe("pays-on-averages");
  expect(alone.leftRange.low).toEqual({ absent: "one-plant" });
});
