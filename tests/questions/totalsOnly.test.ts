import { describe, expect, it } from "vitest";
import { totalsOnly } from "../../src/questions/totalsOnly";
import { codes, found, given } from "./range";

const berries = { usual_total: 412, usual_plants: 30, new_total: 655, new_plants: 30 };
const ask = (more: Parameters<typeof given>[0] = {}) => found(totalsOnly(given({ ...berries, ...more })));

it("names, unit and plants come from the cells", () => {
  const net = ask({ usual_total: ["No net (kg)", 4.12], new_total: ["Net (kg)", 6.55] });
  expect(net).toMatchObject({ usual: { name: "No net", total: 4.12, plants: 30 }, unit: "kg" });
});

it.each([
  ["the usual's", { usual_total: "412 g" }],
  ["the new one's", { new_total: "655 g" }],
])("a unit typed beside one total only, %s, is the unit of both", (_what, more) => {
  expect(ask(more).unit).toBe("g");
});

it("says whether the unevenness was given or taken", () => {
  expect(ask()).toMatchObject({ unevennessGiven: false });
  expect(ask({ unevenness: 0.2 })).toMatchObject({ unevennessGiven: true, unevenness: 0.2 });
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

// log(655/412) / (1.959964 · sqrt(2/30)) by hand
it("a gap beyond the luck of counting says up to which unevenness it is real, up or down", () => {
  const [up, down] = [ask(), ask({ usual_total: 655, new_total: 412 })];
  for (const { realBelow } of [up, down]) expect(realBelow).toBeCloseTo(0.91612, 5);
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
    const nothing = ask({ usual_total: 0, new_total: 0 });
    expect(nothing).toMatchObject({ bound: null, countsOnly: { low: noPercent, high: noPercent } });
    expect(ask({ usual_total: 0, measure: "weight" }).bound).toBeNull();
  });
});

it("a cell without a number leaves no figures, and says where", () => {
  const none = { absent: "no-usable-plants" };
  expect(ask({ new_total: "forgot" })).toMatchObject({
    nothingIn: "B2",
    change: none,
    usual: { total: 412, plants: 30 },
    tried: { total: none, plants: 30, perPlant: none },
    weighed: null,
  });
});

it("always says that totals hide how plants differ; the general guess, a big change and marks only when due", () => {
  expect(codes(ask().cautions())).toEqual(["C13", "C27", "C12"]);
  expect(codes(ask({ unevenness: 0.2, new_total: "~1655" }).cautions())).toEqual(["C13", "C16", "C14", "C12"]);
});

it("a change is big when it is more than twice as much", () => {
  expect(codes(ask({ new_total: 824 }).cautions())).not.toContain("C16");
  expect(codes(ask({ new_total: 825 }).cautions())).toContain("C16");
});

it("refuses what cannot be read", () => {
  expect(totalsOnly(given({ ...berries, unevenness: 35 }))).toMatchObject({ problem: "percent-as-points" });
  expect(totalsOnly(given({ ...berries, measure: "grams" }))).toMatchObject({
    problem: "unknown-choice",
    argument: "measure",
  });
  expect(totalsOnly(given({ ...berries, usual_total: "4 kg", new_total: "5 cm" }))).toMatchObject({
    problem: "units-differ",
  });
});
