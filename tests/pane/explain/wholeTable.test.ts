// @vitest-environment jsdom
import { beforeEach, describe, expect, it, vi } from "vitest";
import { theDesk } from "../../../src/answers/theDesk";
import type { Cell } from "../../../src/nouns/cell";
import { startPane } from "../../../src/pane/pane";
import { type MemorySheet, memorySheet } from "../memorySheet";
import { buttonNamed, settled, shownText } from "../startedPane";

const rows: readonly (readonly Cell[])[] = [
  ["Plant", "Bed", "Mulch", "Fruit", "Grams"],
  ...["Bare soil", "Straw", "Woodchip"].flatMap((mulch, at) =>
    [1, 2, 3].map((bed): Cell[] => [
      `P${at}-${bed}`,
      bed,
      mulch,
      9 + (((at + 2) * bed) % 5),
      2000 + 700 * at + 31 * bed,
    ]),
  ),
];

let sheet: MemorySheet;
let root: HTMLElement;

/** The pane beside a long-form sheet, with the question of several treatments chosen. */
beforeEach(async () => {
  await Promise.all([import("../../../src/pane/explain/tableColumns"), import("../../../src/pane/check/tableAround")]);
  vi.stubGlobal("matchMedia", () => ({ matches: false, addEventListener: () => {} }));
  sheet = memorySheet(theDesk);
  sheet.fill("A1", rows);
  root = document.createElement("main");
  document.body.replaceChildren(root);
  startPane(root, sheet, theDesk);
  sheet.click("A1:E10");
  await settled();
  ask("COMPAREMANY");
  await settled();
});

function ask(value: string): void {
  const question = [...root.querySelectorAll("select")].find(({ options }) => options[0]?.value === "COMPARETWO");
  if (question === undefined) throw new Error("no question");
  question.value = value;
  question.dispatchEvent(new Event("change"));
}

async function press(name: string): Promise<void> {
  buttonNamed(root, name).click();
  await settled();
}

const usual = () => [...root.querySelectorAll("select")].find(({ options }) => options[0]?.text === "Choose one");

describe("a table of plants", () => {
  it("gives its columns, and says which, and what else could be meant", async () => {
    await press("Find the columns in A1:E10");
    const text = shownText(root);
    expect(text).toContain("Amounts: Grams. Treatments: Mulch. Beds: Bed. Where that is wrong, take other cells.");
    expect(text).toContain("Fruit holds numbers too. Ask of what you chose before harvest.");
    for (const taken of ["E1:E10", "C1:C10", "B1:B10"]) expect(text).toContain(taken);
    expect(text).toContain("Treatments found: Bare soil, Straw, Woodchip.");
  });

  it("takes a name such as bare soil for the usual, and writes the formula where the grower clicks", async () => {
    await press("Find the columns in A1:E10");
    expect(usual()?.value).toBe("Bare soil");
    sheet.click("G2");
    await settled();
    await press("Put it there");
    expect(sheet.at("G2")?.formula).toBe('=FAIRBED.COMPAREMANY(E1:E10,C1:C10,,B1:B10,"Bare soil")');
  });

  it("writes nothing while it still looks which treatments there are", async () => {
    await press("Find the columns in A1:E10");
    await press("Start over");
    const { read } = sheet;
    buttonNamed(root, "Find the columns in A1:E10").click();
    sheet.read = (reference, home) => (reference.includes("C1:C10") ? new Promise(() => {}) : read(reference, home));
    await settled();
    sheet.click("G2");
    await settled();
    expect(buttonNamed(root, "Put it there").disabled).toBe(true);
  });

  it("asks which is the usual where no name tells, before it writes anything", async () => {
    sheet.fill(
      "C2",
      ["Hay", "Hay", "Hay"].map((name) => [name]),
    );
    await settled();
    await press("Find the columns in A1:E10");
    expect(usual()?.value).toBe(" ");
    sheet.click("G2");
    await settled();
    expect(shownText(root)).toContain("Say which treatment is the usual, or compare all pairs.");
    expect(buttonNamed(root, "Put it there").disabled).toBe(true);
    const select = usual() ?? expect.fail("not asked");
    select.value = "";
    select.dispatchEvent(new Event("change"));
    await press("Put it there");
    expect(sheet.at("G2")?.formula).toBe("=FAIRBED.COMPAREMANY(E1:E10,C1:C10,,B1:B10)");
  });

  it("says so where there are no amounts with names beside them, and forgets it with another question", async () => {
    sheet.click("A1:B10");
    await settled();
    await press("Find the columns in A1:B10");
    expect(shownText(root)).toContain(
      "There is no column of amounts with names beside them. Take each range by itself.",
    );
    ask("PERPLANT");
    expect(shownText(root)).not.toContain("There is no column");
  });

  it("says of picks that they are to be added up first", async () => {
    sheet.fill("A2", [["P0-2"]]);
    await settled();
    await press("Find the columns in A1:E10");
    expect(shownText(root)).toContain("These look like picks, several for a plant. Add them up with TALLYPICKS first.");
  });

  it("is found around a cell of it, or a column", async () => {
    for (const address of ["C4", "E1:E10"]) {
      sheet.click(address);
      await settled();
      await press(`Find the columns around ${address}`);
      expect(shownText(root)).toContain("Amounts: Grams. Treatments: Mulch. Beds: Bed.");
      expect(shownText(root)).toContain("C1:C10");
      await press("Start over");
    }
  });

  it("is missed where nothing stands round the cell", async () => {
    sheet.click("J20");
    await settled();
    await press("Find the columns around J20");
    expect(shownText(root)).toContain("There is no column of amounts with names beside them.");
  });

  it("names what the sheet refuses", async () => {
    sheet.click("A1:ZZ");
    await settled();
    await press("Find the columns in A1:ZZ");
    expect(shownText(root)).toContain("A1:ZZ");
  });
});
