import type { Page } from "playwright-core";
import { beforeAll, describe, expect, it } from "vitest";
import { openPracticePage, put, select, type, value } from "../browser/practicePage";
import { near } from "../near";
import luck from "../reference/luck.json";
import reference from "../reference/practiceCells.json";

// The numbers are R's: tests/reference/practiceCells.R.
const expected = reference.cases;
const own = "Try your own";
const straw = "'The trial'!B1:B9,'The trial'!C1:C9";
let page: Page;

beforeAll(async () => {
  page = await openPracticePage();
});

describe("a formula typed at the keyboard gives R's number", () => {
  it.each([
    ["=FAIRBED.UPDOWN(24,72)", 2],
    ["=FAIRBED.PERPLANT('The trial'!E1:E9)", expected.grassLived],
    [`=FAIRBED.COMPARETWO(${straw},"p value","beds")`, expected.paired.p],
  ])("%s", async (formula, number) => {
    await select(page, own, "H1");
    await type(page, formula);
    near(formula, Number(await value(page, own, "H1")), number, { relative: 1e-9 });
  });
});

describe("a formula in a cell gives R's number", () => {
  it.each([
    [`=FAIRBED.UPDOWN(${straw})`, expected.change],
    [`=FAIRBED.COMPARETWO(${straw},"t")`, expected.welch.t],
    [`=FAIRBED.COMPARETWO(${straw},"df")`, expected.welch.df],
    [`=FAIRBED.COMPARETWO(${straw},"p value")`, expected.welch.p],
    [`=FAIRBED.COMPARETWO(${straw},"Difference low")`, expected.welchDifference.low],
    [`=FAIRBED.COMPARETWO(${straw},"Difference high")`, expected.welchDifference.high],
    [`=FAIRBED.COMPARETWO(${straw},"Label-swap p")`, expected.labelSwap],
    [`=FAIRBED.COMPARETWO(${straw},"t","beds")`, expected.paired.t],
    [`=FAIRBED.COMPARETWO(${straw},"df","beds")`, expected.paired.df],
    [`=FAIRBED.COMPARETWO(${straw},"Change","beds")`, expected.pairedChange],
    ["=FAIRBED.PERPLANT('The trial'!E1:E9,,,\"count as zero\")", expected.grassSetOut],
    ["=FAIRBED.UNEVENNESS('The trial'!B1:B9)", expected.unevennessBare],
  ])("%s", async (formula, number) => {
    near(formula, Number(await put(page, [own, "H3"], formula)), number, { relative: 1e-9 });
  });
});

describe("the practice workbook's own cells", () => {
  it.each([
    ["The trial", "H2", expected.change],
    ["The trial", "H5", expected.grassLived],
    ["The trial", "H6", expected.grassSetOut],
    ["The trial", "H7", expected.unevennessBare],
    ["Two plants each", "F3", 2],
    ["Two plants each", "F6", expected.labelSwapTwoPlants],
    ["Before planting", "B8", expected.setOutPerTreatment],
    ["Before planting", "B10", expected.chanceOfSixEach],
    ["Does it pay", "F8", expected.worth.left],
    ["Does it pay", "F9", expected.worth.low],
    ["Does it pay", "F10", expected.worth.high],
    ["Does it pay", "F11", expected.worth.breakEvenChange],
    ["Does it pay", "F12", expected.worth.nextYear],
  ])("%s!%s holds the expected number", async (sheet, address, number) => {
    near(`${sheet}!${address}`, Number(await value(page, sheet, address)), number, { relative: 1e-9 });
  });

  it.each([
    ["The trial", "H3", "Not settled, may be up"],
    ["The trial", "H4", "Up, enough to matter"],
    ["Two plants each", "F4", "+200 % (3 times)"],
    ["Two plants each", "F5", "Too few plants"],
  ])("%s!%s holds the expected words", async (sheet, address, words) => {
    expect(await value(page, sheet, address)).toBe(words);
  });

  it("the smallest change that shows is the one with a chance of 80 %", async () => {
    near("chance", Number(await put(page, ["Before planting", "B12"], "=FAIRBED.CHANCETOSEE(B9,B4,B3,,B5)")), 0.8, {
      absolute: 1e-6,
    });
  });
});

describe("an empty cell is not a zero", () => {
  it("counts a zero as a plant that bore nothing, and an empty cell as not recorded", async () => {
    const cells = { K1: 0, K3: 10, K4: 20 };
    for (const [address, content] of Object.entries(cells)) await put(page, [own, address], content);
    expect(await put(page, [own, "L1"], "=FAIRBED.PERPLANT(K1:K4)")).toBe(10);
    expect(await put(page, [own, "L2"], '=FAIRBED.PERPLANT(K1:K4,"Not recorded")')).toBe(1);
    expect(await put(page, [own, "L3"], '=FAIRBED.PERPLANT(K1:K4,"Plants counted")')).toBe(3);
  });
});

describe("a whole table", () => {
  it("spills labels and values", async () => {
    const { cells } = await page.evaluate(() => fairbedPractice.port.read("G11:H18", "The trial"));
    expect(cells.map(([label]) => label)).toEqual([
      "Change",
      "Change low",
      "Change high",
      "Times as much",
      "Average, usual",
      "Average, new",
      "Plants, usual",
      "Plants, new",
    ]);
    near("Change", Number(cells[0]?.[1]), expected.change, { relative: 1e-9 });
  });
});

describe("a call that cannot be answered", () => {
  it("shows #VALUE! and a sentence for a change of nothing", async () => {
    expect(await put(page, [own, "M1"], "=FAIRBED.PLANTSNEEDED(0,25%)")).toEqual({ error: "#VALUE!" });
    expect(await page.evaluate(() => fairbedPractice.refusal("'Try your own'!M1 PLANTSNEEDED"))).toMatch(
      /^No change needs no trial\./,
    );
  });

  it("shows #N/A when a number is due and the cells hold none", async () => {
    expect(await put(page, [own, "M2"], "=FAIRBED.PERPLANT(Z1:Z9)")).toEqual({ error: "#N/A" });
  });
});

describe("the luck of twenty draws is R's", () => {
  const sheet = "Luck in class";
  it.each(luck.cases.gaps.map((gap, at) => [at + 1, gap] as const))("draw number %d", async (draw, gap) => {
    near(String(draw), Number(await value(page, sheet, `F${draw + 1}`)), gap, { relative: 1e-12 });
  });

  it("the sheet counts them, and follows the number that is typed", async () => {
    expect(await value(page, sheet, "I4")).toBe(luck.cases.wide);
    near("widest", Number(await value(page, sheet, "I5")), luck.cases.widest, { relative: 1e-12 });
    near("unevenness", Number(await value(page, sheet, "I6")), luck.cases.unevenness, { relative: 1e-12 });
    await put(page, [sheet, "I2"], 7);
    near("by hand", Number(await value(page, sheet, "I3")), luck.cases.gaps[6] ?? 0, { relative: 1e-12 });
  });
});
