import { expect, it } from "vitest";
import { tallyPicks } from "../../src/questions/tallyPicks";
import { codes, found, given } from "./range";

const call = given({
  plants: ["A1", "A2", "A1", "A2", "A3"],
  dates: ["2023-07-01", "2023-07-01", "2023-07-20", "2023-07-20", "soon"],
  amounts: [5, "6 g", 0, "lost", 3],
});

it("tells what to look out for by METHODS 8.13: loss, late harvest, what was read", () => {
  expect(codes(found(tallyPicks(call)).cautions())).toEqual(["C03", "C09", "C14", "C20", "C12"]);
});

it("a zero that may be an empty cell is one of them where the host does not tell", () => {
  const { amounts } = call;
  const unverified = { ...call, ...(amounts && { amounts: { ...amounts, zerosVerified: false } }) };
  expect(found(tallyPicks(unverified)).cautions()).toContainEqual({ caution: "C15", zeros: 1 });
});

it("the loss counts all plants set out, of each treatment", () => {
  const treated = { ...call, ...given({ treatments: ["x", "y", "x", "y", "y"] }) };
  const [loss] = found(tallyPicks(treated)).cautions();
  expect(loss).toMatchObject({ losses: [{ name: "y", lost: 1, setOut: 2 }], strong: true });
});

it("one empty cell for dates is none", () => {
  expect(found(tallyPicks({ ...call, ...given({ dates: [null] }) })).plants[0]?.first).toBeNull();
});

it("a plant with zeros only was visited: it needs no treatment from a list", () => {
  const zeros = given({ plants: ["A1", "A2"], amounts: [0, 4], treatments: [null, "x"], all_plants: ["A1", "A2"] });
  expect(found(tallyPicks(zeros)).plants.map(({ treatment }) => treatment)).toEqual([null, "x"]);
});
