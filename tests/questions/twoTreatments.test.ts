import { expect, it } from "vitest";
import { compareTwo } from "../../src/questions/compareTwo";
import { codes, found, given } from "./range";

const plants = { usual: ["Bare (g)", 4, "lost", 5, "?", 6, 5], new: ["Straw", 7, 8, 9, 8] };

it("keeps who was lost and who not recorded, by place", () => {
  const { usual, tried, unit } = found(compareTwo(given(plants)));
  expect(usual).toMatchObject({ role: "usual", name: "Bare", mean: 5 });
  expect(usual.lost.map(({ cell }) => cell)).toEqual(["B4"]);
  expect(usual.notRecorded.map(({ cell }) => cell)).toEqual(["B6"]);
  expect(tried).toMatchObject({ role: "new", name: "Straw", lost: [], mean: 8 });
  expect(unit).toBe("g");
});

it("where a range holds no plants, says which, and gives no figure", () => {
  const answer = found(compareTwo(given({ usual: [4, 5], new: ["lost"] })));
  expect(answer).toMatchObject({
    verdict: "none",
    rangeVerdict: null,
    nothingIn: "B2",
    change: { absent: "no-usable-plants" },
  });
  expect(answer.labelSwap()).toBeNull();
  expect(answer.onePlantDecides()).toBeNull();
  expect(codes(answer.cautions())).toEqual(["C03", "C04", "C12"]);
});

it("ranks put their own p in place, and leave range and verdict", () => {
  const call = { usual: [4, 5, 6, 5.5], new: [7, 8, 9, 5.8] };
  const [plain, ranks] = [{}, { how: "ranks" }].map((how) => found(compareTwo(given({ ...call, ...how }))));
  expect(ranks?.df).toEqual({ absent: "no-degrees-of-freedom" });
  expect(ranks?.pValue).not.toBe(plain?.pValue);
  expect(ranks?.changeRange).toEqual(plain?.changeRange);
  expect(ranks?.verdict).toBe(plain?.verdict);
});

it.each(["ranks", "pairs ranks"])("%s of nothing are no figures", (how) => {
  const none = { absent: "no-usable-plants" };
  const answer = found(compareTwo(given({ usual: [4, 5], new: ["lost", "lost"], how })));
  expect(answer).toMatchObject({ t: none, df: none, pValue: none, verdict: "none" });
});

it("keeps what the range says beside what so few plants allow", () => {
  const answer = found(compareTwo(given({ usual: [10, 11, 12], new: [20, 21, 22] })));
  expect(answer).toMatchObject({ rangeVerdict: "up-enough", verdict: "leaning-up" });
});

it("one plant has an average, and neither deviation nor unevenness", () => {
  const { usual } = found(compareTwo(given({ usual: [5], new: [7, 8, 9] })));
  expect(usual).toMatchObject({ mean: 5, deviation: { absent: "one-plant" }, unevenness: { absent: "one-plant" } });
});
