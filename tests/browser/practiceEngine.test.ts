import type { Page } from "playwright-core";
import { beforeAll, expect, it } from "vitest";
import { put, value } from "./practicePage";
import { openWithProbe } from "./probe";

const own = "Try your own";
let page: Page;

beforeAll(async () => {
  page = await openWithProbe();
  await put(page, [own, "A2"], 0);
  await put(page, [own, "B2"], "lost");
});

/** The arguments that FAIRBED.PROBE received in a formula in G1. */
async function given(formula: string): Promise<unknown[]> {
  return JSON.parse(String(await put(page, [own, "G1"], formula)));
}

it("hands an empty cell over as null and a zero as 0, with the place of both", async () => {
  expect(await given("=FAIRBED.PROBE(A1:B3)")).toEqual([
    [
      ["The usual", "New"],
      [0, "lost"],
      [null, null],
    ],
    null,
    null,
    {
      address: "'Try your own'!G1",
      parameterAddresses: ["'Try your own'!A1:B3", null, null],
      functionName: "PROBE",
    },
  ]);
});

it("knows the functions in any letter case", async () => {
  expect((await given("=fairbed.Probe(1)"))[0]).toBe(1);
});

it("hands typed values over as they are and an omitted argument as null", async () => {
  expect((await given('=FAIRBED.PROBE(-30%,,"it ""is""")')).slice(0, 3)).toEqual([-0.3, null, 'it "is"']);
  expect((await given("=FAIRBED.PROBE(TRUE)"))[0]).toBe(true);
});

it("hands an error cell over as Excel does", async () => {
  const notAvailable = { type: "Error", basicValue: "#N/A", errorType: "NotAvailable" };
  expect((await given("=FAIRBED.PROBE(NA())"))[0]).toEqual(notAvailable);
  await put(page, [own, "H1"], "=NA()");
  expect((await given("=FAIRBED.PROBE(H1:H2)"))[0]).toEqual([[notAvailable], [null]]);
});

it("hands the result of an expression over as a block without a place", async () => {
  const [cells, , , invocation] = await given("=FAIRBED.PROBE({1,2;3,4}*2)");
  expect(cells).toEqual([
    [2, 4],
    [6, 8],
  ]);
  expect(invocation).toHaveProperty("parameterAddresses", [null, null, null]);
});

it("reads other sheets and names", async () => {
  const [cells, , , invocation] = await given("=FAIRBED.PROBE('The trial'!C4:C5)");
  expect(cells).toEqual([[3972], ["lost (wheelbarrow)"]]);
  expect(invocation).toHaveProperty("parameterAddresses", ["'The trial'!C4:C5", null, null]);
});

it("spills a block over its neighbours, and says #SPILL! where one of them holds something", async () => {
  await put(page, [own, "J1"], "=FAIRBED.BLOCK(A1)");
  const block = () => page.evaluate(async () => (await fairbedPractice.port.read("J1:K2", "Try your own")).cells);
  expect(await block()).toEqual([
    ["left", 1],
    [null, true],
  ]);
  await put(page, [own, "K2"], "in the way");
  expect(await value(page, own, "J1")).toEqual({ error: "#SPILL!" });
});

it("lets other formulas read a spilled block", async () => {
  await put(page, [own, "M1"], "=FAIRBED.BLOCK(A1)");
  expect(await put(page, [own, "P1"], "=SUM(N1:N2)")).toBe(1);
  expect((await given("=FAIRBED.PROBE(M1:N1)"))[0]).toEqual([["left", 1]]);
});

it("shows a refusal's code and remembers its sentence", async () => {
  expect(await put(page, [own, "G3"], "=FAIRBED.REFUSED(A1)")).toEqual({ error: "#N/A" });
  expect(await page.evaluate(() => fairbedPractice.refusal("'Try your own'!G3 REFUSED"))).toBe(
    "no numbers in these cells",
  );
});

it("takes a call inside another formula", async () => {
  expect(await put(page, [own, "G4"], '=IFERROR(FAIRBED.REFUSED(A1),"set aside")')).toBe("set aside");
});

it("SORT leaves the cells of other formulas over the same range in their order", async () => {
  for (const [at, number] of [30, 10, 20].entries()) await put(page, [own, `R${at + 1}`], number);
  expect(await put(page, [own, "U1"], '=INDEX(SORT(R1:R3),1)&": "&TEXTJOIN(" ",TRUE,R1:R3)')).toBe("10: 30 10 20");
  await put(page, [own, "S1"], "=SORT(R1:R3)");
  await put(page, [own, "T1"], '=TEXTJOIN(" ",TRUE,R1:R3)');
  await put(page, [own, "R1"], 40);
  expect(await value(page, own, "S1")).toBe(10);
  expect(await value(page, own, "T1")).toBe("40 10 20");
});
