import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { isRefusal } from "../../src/answers/desk";
import { theDesk } from "../../src/answers/theDesk";
import { toCellRange } from "../../src/ranges/toCellRange";
import { explain } from "../../src/words/explain";
import { near } from "../near";
import swaps from "../reference/manySwap.json";
import reference from "../reference/manyTreatments.json";
import { cell, labels, matrix, refused } from "./call";

const order = ["Bare soil", "Straw", "Woodchip", "Grass clippings"];
const plants = readFileSync("tests/reference/demoPlants.csv", "utf8")
  .trim()
  .split("\n")
  .slice(1)
  .map((line) => line.split(","))
  .toSorted((one, other) => order.indexOf(one[1] ?? "") - order.indexOf(other[1] ?? ""));
const mulches = ["mulch", ...plants.map(([, mulch = ""]) => mulch)];
const beds = ["bed", ...plants.map(([, , bed]) => Number(bed))];
const grams = ["grams", ...plants.map(([, , , amount = ""]) => (/^\d+$/.test(amount) ? Number(amount) : "lost"))];
const inBeds = reference.cases.find(({ name }) => name === "Marlpit Corner in beds") ?? expect.fail("no case");

describe("Marlpit Corner in beds, against bare soil (R; METHODS section 11)", () => {
  it("answers in one cell, in at most 60 characters", () => {
    expect(cell("COMPAREMANY", grams, mulches, null, beds, "bare  SOIL")).toBe("Straw up; 2 not settled");
  });

  it("the table: highest first, columns in METHODS' order, footer below", () => {
    const table = matrix("COMPAREMANY", grams, mulches, "table", beds, "Bare soil");
    expect(table[0]).toEqual(
      "Treatment/Change/Range/Verdict/Plants/Lost/Average/Average, beds removed/Change low/Change high/p value/Letters".split(
        "/",
      ),
    );
    expect(labels(table).slice(1)).toEqual(
      "Straw/Grass clippings/Woodchip/Bare soil/p, all together/Unevenness/Method/Cautions".split("/"),
    );
    const straw = table[1] ?? [];
    expect(straw.slice(2, 6)).toEqual(["13 % to 95 %", "Up, enough to matter", 7, 1]);
    near("change", Number(straw[1]), 0.4552, { absolute: 0.00005 });
    near("adjusted average", Number(straw[7]), inBeds.means[1] ?? 0);
    near("p", Number(straw[10]), [inBeds.dunnettP].flat()[0] ?? 0, { absolute: 1e-9 });
    near("p, all together", Number(table[5]?.[1]), inBeds.p, { relative: 1e-9 });
    near("unevenness", Number(table[6]?.[1]), 0.200383023, { relative: 1e-8 });
  });

  it("differences with Dunnett's range (METHODS: 453.00 to 2294.69)", () => {
    const [, straw = []] = matrix("COMPAREMANY", grams, mulches, "difference", beds, "Bare soil");
    expect(straw[0]).toBe("Straw");
    near("low", Number(straw[2]), 453.0, { absolute: 0.005 });
    near("high", Number(straw[3]), 2294.69, { absolute: 0.005 });
  });

  it("sums of squares, beds first (R: F 4.10713 and 6.07816)", () => {
    const table = matrix("COMPAREMANY", grams, mulches, "anova", beds, "Bare soil");
    expect(labels(table)).toEqual(["Source", "beds", "treatments", "residual"]);
    near("beds F", Number(table[1]?.[4]), 4.10713, { absolute: 0.000005 });
    near("treatments F", Number(table[2]?.[4]), inBeds.f, { relative: 1e-9 });
  });

  it("letters of all pairs (R's multcomp: straw above bare soil and woodchip)", () => {
    const table = matrix("COMPAREMANY", grams, mulches, "letters", beds, null, "all pairs");
    expect(Object.fromEntries(table.slice(1))).toEqual({
      Straw: "a",
      "Grass clippings": "ab",
      Woodchip: "b",
      "Bare soil": "b",
    });
  });

  it("a treatment's name shows its verdict, a column's name the column", () => {
    expect(cell("COMPAREMANY", grams, mulches, "straw", beds, "Bare soil")).toBe("Up, enough to matter");
    expect(matrix("COMPAREMANY", grams, mulches, "Plants", beds, "Bare soil").flat()).toEqual([7, 7, 8, 8]);
  });
});

it("beds ignored: the one-way figures (R; METHODS: Dunnett straw p .0290)", () => {
  const oneWay = reference.cases.find(({ name }) => name === "Marlpit Corner") ?? expect.fail("no case");
  const [, straw = []] = matrix("COMPAREMANY", grams, mulches, "table", null, "Bare soil");
  near("p", Number(straw[10]), [oneWay.dunnettP].flat()[0] ?? 0, { absolute: 1e-9 });
  expect(straw[7]).toBe("");
});

it("what takes refits and swaps is told by the cautions, not by the table at every keystroke (METHODS 8.5)", () => {
  const { value, treatment, bed } =
    swaps.cases.find(({ name }) => /^above the bar/.test(name)) ?? expect.fail("no case");
  const names = treatment.map((at) => ["bare", "straw", "bark"][at] ?? "");
  expect(cell("COMPAREMANY", value, names, "cautions", bed, "bare")).toMatch(
    /^Two checks for luck do not agree here\./,
  );
  expect(cell("COMPAREMANY", value, names, "words", bed, "bare")).toMatch(/ Two checks for luck do not agree here\. /);
  expect(matrix("COMPAREMANY", value, names, "table", bed, "bare").at(-1)?.[1]).toBe("One place, one season.");
});

it("without a usual, changes are empty and pairs are told", () => {
  const table = matrix("COMPAREMANY", grams, mulches, "table", beds);
  expect(table[1]?.slice(1, 4)).toEqual(["", "", ""]);
  expect(cell("COMPAREMANY", grams, mulches, null, beds)).toBe("2 pairs shown to differ; 4 pairs not settled");
});

it("lost plants count as zero when asked", () => {
  const table = matrix("COMPAREMANY", grams, mulches, "table", null, "Bare soil", null, null, "count as zero");
  const grass = table.find(([name]) => name === "Grass clippings") ?? [];
  expect(grass[4]).toBe(8);
  near("average", Number(grass[6]), 2975.875);
});

it("a treatment without plants keeps its row; without plants of the usual there is no answer", () => {
  const names = ["A", "A", "A", "B", "B", "B", "C"];
  const amounts = [4, 5, 6, 7, 8, 9, "lost"];
  const table = matrix("COMPAREMANY", amounts, names, "table", null, "A");
  expect(table.find(([name]) => name === "C")?.[3]).toBe("No answer: no usable plants in C");
  expect(cell("COMPAREMANY", amounts, names, null, null, "C")).toBe("No answer: no usable plants in C");
});

it("all values equal, and one plant each, give averages and say why there is no more", () => {
  const names = ["A", "A", "B", "B"];
  expect(cell("COMPAREMANY", [5, 5, 5, 5], names, "p, all together", null, "A")).toBe(
    "all values equal: check the data",
  );
  expect(cell("COMPAREMANY", [5, 6], ["A", "B"], "B", null, "A")).toBe("Too few plants");
});

it.each([
  [[1, 2, 3], ["A", "A", "A"], null, null, null, /Only “A” is named/],
  [[1, 2, 3], ["A", "B", "A"], null, "C", null, /No treatment is called “C”/],
  [[1, 2, 3], ["A", "B", "A"], null, null, "against usual", /To compare against the usual, name it/],
  [[1, 2, 3, 4], ["A", "A", "B", "B"], [1, 1, 2, 2], "A", null, /Each treatment sits in its own bed/],
  [[1, 2, 3, 4], ["A", "A", "B", "B"], [1, 2, 3, 4], "A", null, /Each bed holds one treatment, so a bed counts once/],
  [[1, 2, 3, 4], ["A", "B", "A", "B"], [1, 1, 2, 2], "A", "own unevenness", /cannot be used with beds/],
  [[1, 2, 3, 4, 5, 7], "A,B,A,B,C,C".split(","), [1, 1, 2, 2, 3, 3], "A", null, /C shares no bed with the others/],
] as const)("%j by %j is refused with a sentence", (...call) => {
  const [amounts, treatments, bedLabels, usual, how, sentence] = call;
  const { code, message } = refused("COMPAREMANY", amounts, treatments, null, bedLabels, usual, how);
  expect(code).toBe("#VALUE!");
  expect(message).toMatch(sentence);
});

it("explains in sentences of at most 25 words, without a never-say word", () => {
  const given = [grams, mulches, null, beds, "Bare soil"];
  const names = theDesk.parameters("COMPAREMANY") ?? [];
  const column = (values: readonly unknown[]) => values.map((value) => [value]);
  const ranges = names.map(({ name }, at) => {
    const raw = given[at] ?? null;
    return raw === null ? null : toCellRange(name, Array.isArray(raw) ? column(raw) : raw, { zerosVerified: true });
  });
  const answer = theDesk.ask("COMPAREMANY", ranges);
  if (isRefusal(answer)) throw new Error(answer.message);
  const { finding, say, compared, luck, lookOutFor, next, workings } = explain(answer.finding);
  const texts = [finding, say, compared, ...luck, ...lookOutFor.map(({ sentence }) => sentence), ...next, ...workings];
  for (const sentence of texts.flatMap((text) => text.split(/(?<=[.?!]) /))) {
    expect(sentence.split(" ").length, sentence).toBeLessThanOrEqual(25);
    expect(sentence).not.toMatch(/proves|proven|significant|no effect|no difference|best|scientific/i);
  }
  expect(finding).toMatch(/^Straw 4390 g, Grass clippings 3370 g, Woodchip 3070 g and Bare soil 3020 g a plant\./);
});
