import { expect, it } from "vitest";
import { compareTwo } from "../../src/questions/compareTwo";
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
