import { expect, it } from "vitest";
import { readingCautions } from "../../src/questions/readingCautions";
import { readSample } from "../../src/ranges/readSample";
import { found, range, sample } from "./range";

it("C14 counts units converted and marks removed, over all ranges", () => {
  const [usual, tried] = [sample("usual", ["Bare (g)", "1 kg", 900, "~950"]), sample("new", ["506*", 500])];
  expect(readingCautions([usual, tried])).toEqual([{ caution: "C14", count: 3 }]);
});

it("C15 counts zeros that may be empty cells", () => {
  const doubtful = found(readSample({ ...range("usual", [4, 0, "none", 0]), zerosVerified: false }, "keep"));
  expect(readingCautions([doubtful])).toEqual([{ caution: "C15", zeros: 2 }]);
  expect(readingCautions([sample("usual", [4, 0, 5])])).toEqual([]);
});

it("C35 names a last cell that equals the average of those above", () => {
  expect(readingCautions([sample("usual", [3, 4, 6, 7, 5])])).toMatchObject([
    { caution: "C35", place: { cell: "B6" } },
  ]);
  expect(readingCautions([sample("usual", [3, 4, 6, 7, 6])])).toEqual([]);
});
