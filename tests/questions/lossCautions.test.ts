import { expect, it } from "vitest";
import { changeBetween, lossCautions } from "../../src/questions/lossCautions";
import { usablePlants } from "../../src/questions/usablePlants";
import { codes, sample } from "./range";

const plants = (count: number, lost: number) =>
  Array.from({ length: count }, (_, at): number | string => (at < lost ? "lost" : 4 + (at % 3)));

function losses(usual: readonly (number | string)[], tried: readonly (number | string)[]) {
  const changes = { change: 0.5, changeLostAsZero: 0.2, countedAsZero: false };
  return lossCautions({ usual: sample("usual", usual), tried: sample("new", tried), ...changes });
}

it("none without a loss", () => {
  expect(losses(plants(8, 0), plants(8, 0))).toEqual([]);
});

it("C03 and C04 with any loss, with the counts of both", () => {
  const cautions = losses(["Bare", ...plants(8, 0)], plants(10, 1));
  expect(codes(cautions)).toEqual(["C03", "C04"]);
  expect(cautions[0]).toMatchObject({
    losses: [
      { name: "Bare", role: "usual", lost: 0, setOut: 8 },
      { name: null, role: "new", lost: 1, setOut: 10 },
    ],
    change: 0.5,
    changeLostAsZero: 0.2,
    strong: false,
  });
});

it.each([
  [plants(10, 2), plants(10, 1), true],
  [plants(10, 1), plants(10, 1), false],
  [plants(10, 0), plants(5, 1), true],
])("strong from 20 % lost, or 20 points apart: case %#", (usual, tried, strong) => {
  expect(losses(usual, tried)[0]).toMatchObject({ strong });
});

it("the change between two treatments' averages, and why there is none", () => {
  const of = (cells: readonly (number | string)[]) => usablePlants(sample("usual", cells), "count as zero");
  expect(changeBetween(of([4, 6]), of([9, "lost", 6]))).toBe(0);
  expect(changeBetween(of(["lost"]), of([9]))).toEqual({ absent: "usual-not-above-zero" });
});
