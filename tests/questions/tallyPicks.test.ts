import { expect, it } from "vitest";
import { tallyPicks } from "../../src/questions/tallyPicks";
import { codes, found, given, range } from "./range";

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

it("a plant of the list is that of the log, however the dash in its label is spaced", () => {
  const { plants } = found(
    tallyPicks(given({ plants: ["B1 - 1", "B1-2"], amounts: [4, 5], all_plants: ["B1-1", "B1 - 2"] })),
  );
  expect(plants.map(({ plant, picked, notes }) => [plant, picked, notes])).toEqual([
    ["B1-1", 4, []],
    ["B1 - 2", 5, []],
  ]);
});

it("a first label of the list that is a plant of the log is no heading", () => {
  const all_plants = ["Gate-left", "B1", "B2"];
  const { plants } = found(tallyPicks(given({ plants: ["Gate - left", "B1"], amounts: [4, 5], all_plants })));
  expect(plants.map(({ plant, notes }) => [plant, notes])).toEqual(all_plants.map((plant) => [plant, []]));
});

it("the list's treatment and bed win over the log's, and are told where more than capitals differs", () => {
  const log = given({
    plants: ["B1", "B2"],
    amounts: [4, 5],
    treatments: ["straw mulch", "Bark"],
    beds: ["east", "East"],
  });
  const rows = [
    ["B1", "Straw Mulch", "West"],
    ["B2", "Straw Mulch", "East"],
  ];
  const all_plants = { ...range("all_plants", null), cells: rows };
  expect(found(tallyPicks({ ...log, all_plants })).plants).toMatchObject([
    {
      treatment: "Straw Mulch",
      bed: "West",
      notes: [{ note: "listed-otherwise", of: "bed", listed: "West", logged: "east" }],
    },
    {
      treatment: "Straw Mulch",
      bed: "East",
      notes: [{ note: "listed-otherwise", of: "treatment", listed: "Straw Mulch", logged: "Bark" }],
    },
  ]);
});

it("nothing could be read where a plant's rows hold no amount; a plant without rows has no day", () => {
  const log = given({ plants: ["A1", "A2", "A3"], amounts: ["?", "lost", 4], all_plants: ["A1", "A2", "A3", "A4"] });
  const dates = given({ dates: ["2023-07-01", "2023-07-02", "2023-07-03"] });
  const { plants } = found(tallyPicks({ ...log, ...dates }));
  expect(plants.map(({ status, nothingRead, picks }) => [status, nothingRead, picks])).toEqual([
    ["weight-missing", true, 1],
    ["lost", true, 0],
    ["ok", false, 1],
    ["ok", false, 0],
  ]);
  expect(plants[3]).toMatchObject({ rows: 0, first: null, last: null });
});
