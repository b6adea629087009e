import { describe, expect, it } from "vitest";
import { totalsOnly } from "../../src/questions/totalsOnly";
import { codes, found, given } from "./range";

const berries = { usual_total: 412, usual_plants: 30, new_total: 655, new_plants: 30 };
const ask = (more: Parameters<typeof given>[0] = {}) => found(totalsOnly(given({ ...berries, ...more })));

it("names, unit and plants come from the cells", () => {
  const net = ask({ usual_total: ["No net (kg)", 4.12], new_total: ["Net (kg)", 6.55] });
  expect(net).toMatchObject({ usual: { name: "No net", total: 4.12, plants: 30 }, unit: "kg" });
});

describe("counts or weights", () => {
  it.each([
    ["whole numbers are counts", {}, null],
    ["said to be weights", { measure: "weight" }, "said"],
    ["a fraction is no count", { usual_total: 412.5 }, "fraction"],
    ["a fraction is no count, whatever is said", { usual_total: 412.5, measure: "count" }, "fraction"],
    ["a unit is no count", { usual_total: "412 g" }, "unit"],
    ["more than 1000 a plant is no count", { new_total: 30001 }, "large"],
    ["1000 a plant may be one", { new_total: 30000 }, null],
    ["more than 1000 a plant may be a count if said so", { new_total: 30001, measure: "count" }, null],
  ])("%s", (_what, more, weighed) => {
    expect(ask(more).weighed).toBe(weighed);
  });

  it("weights have no range from counting alone", () => {
    expect(ask({ measure: "weight" }).countsOnly).toEqual({ low: { absent: "weights" }, high: { absent: "weights" } });
  });
});

it("counts so small that luck alone reaches the gap are real at no unevenness", () => {
  expect(ask({ usual_total: 3, new_total: 6 }).realBelow).toEqual({ absent: "luck-of-counting" });
  expect(ask({ usual_total: 3, new_total: 6, measure: "weight" }).realBelow).toBeTypeOf("number");
});

describe("a total of 0", () => {
  const noPercent = { absent: "zero-total" };

  it("of the usual leaves a lower end", () => {
    const { change, changeRange, realBelow, countsOnly, bound } = ask({ usual_total: 0 });
    expect([change, changeRange.low, realBelow]).toEqual([noPercent, noPercent, noPercent]);
    expect(countsOnly.high).toEqual({ absent: "no-upper-limit" });
    expect(bound?.end).toBe("at least");
  });

  it("of the new leaves an upper end", () => {
    const { change, countsOnly, bound } = ask({ new_total: 0 });
    expect(change).toEqual(noPercent);
    expect(countsOnly.low).toEqual({ absent: "no-lower-limit" });
    expect(bound?.end).toBe("at most");
  });

  it("of both, or of weights, leaves none", () => {
    expect(ask({ usual_total: 0, new_total: 0 }).bound).toBeNull();
    expect(ask({ usual_total: 0, measure: "weight" }).bound).toBeNull();
  });
});

it("a cell without a number leaves no figures, and says where", () => {
  expect(ask({ new_total: "forgot" })).toMatchObject({ nothingIn: "B2", change: { absent: "no-usable-plants" } });
});

it("always says that totals hide how plants differ; the general guess, a big change and marks only when due", () => {
  expect(codes(ask().cautions())).toEqual(["C13", "C27", "C12"]);
  expect(codes(ask({ unevenness: 0.2, new_total: "~1655" }).cautions())).toEqual(["C13", "C16", "C14", "C12"]);
});

it("refuses what cannot be read", () => {
  expect(totalsOnly(given({ ...berries, unevenness: 35 }))).toMatchObject({ problem: "percent-as-points" });
  expect(totalsOnly(given({ ...berries, measure: "grams" }))).toMatchObject({ problem: "unknown-choice" });
  expect(totalsOnly(given({ ...berries, usual_total: "4 kg", new_total: "5 cm" }))).toMatchObject({
    problem: "units-differ",
  });
});
