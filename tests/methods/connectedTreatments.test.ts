import { expect, it } from "vitest";
import { connectedTreatments } from "../../src/methods/connectedTreatments";

const planted = (...rows: readonly (readonly [treatment: number, bed: number])[]) =>
  rows.map(([treatment, bed]) => ({ value: 1, treatment, bed }));

it("beds that hold two treatments link them, also by way of a third", () => {
  expect(connectedTreatments(planted([0, 0], [1, 0], [1, 1], [2, 1]))).toEqual([[0, 1, 2]]);
});

it("treatments that share no bed with the others stand apart", () => {
  expect(connectedTreatments(planted([0, 0], [1, 0], [2, 1], [3, 1]))).toEqual([
    [0, 1],
    [2, 3],
  ]);
});

it("a bed of its own for each treatment links none", () => {
  expect(connectedTreatments(planted([0, 0], [0, 0], [1, 1]))).toEqual([[0], [1]]);
});

it("a later bed may link what stood apart", () => {
  expect(connectedTreatments(planted([0, 0], [1, 1], [0, 2], [1, 2]))).toEqual([[0, 1]]);
});

it("treatments of a group rise, whatever order the plants stand in", () => {
  expect(connectedTreatments(planted([10, 0], [9, 0], [2, 0]))).toEqual([[2, 9, 10]]);
});

it("the first plant's treatment is in the first group, also when a later bed adds to it", () => {
  expect(connectedTreatments(planted([0, 0], [1, 1], [3, 1], [0, 2], [2, 2]))).toEqual([
    [0, 2],
    [1, 3],
  ]);
});

it("what one bed links brings along all that was linked before", () => {
  expect(connectedTreatments(planted([0, 0], [2, 0], [1, 1], [3, 1], [0, 2], [1, 2]))).toEqual([[0, 1, 2, 3]]);
});
