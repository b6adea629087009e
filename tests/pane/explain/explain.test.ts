// @vitest-environment jsdom
import { describe, expect, it, vi } from "vitest";
import type { SheetTrouble } from "../../../src/host/sheet";
import { explain } from "../../../src/words/explain";
import { comparedByHand } from "../handMadeDesk";
import { buttonNamed, comparison, settled, shownText, startedPane } from "../startedPane";

const { finding, compared, lookOutFor } = explain(comparedByHand);
const cautions = lookOutFor.map(({ sentence }) => sentence);

describe("the selected cell is explained", () => {
  it("part by part in order, with what is folded still folded", async () => {
    const { root } = await startedPane();
    const order = [finding, "You can say", compared, "Could it be luck?", "Look out for", "Next"];
    const places = [...order, "All the numbers", "How it was worked out"].map((text) => shownText(root).indexOf(text));
    expect(places).toEqual(places.toSorted((one, other) => one - other));
    expect(places).not.toContain(-1);
    expect(root.querySelectorAll("details[open]")).toHaveLength(0);
  });

  it("with two cautions and the last open, the others folded", async () => {
    const { root } = await startedPane();
    const open = [...root.querySelectorAll("section > ul > li")].map(({ textContent }) => textContent);
    expect(open).toEqual([cautions[0], cautions[1], "One place, one season."]);
    expect(shownText(root)).toContain("1 more to look out for");
  });

  it("and said once to a screen reader", async () => {
    const { root } = await startedPane();
    expect(root.querySelector("[aria-live]")?.textContent).toBe(finding);
  });

  it("over the cells as the sheet holds them, empty ones as null", async () => {
    const { sheet, desk } = await startedPane();
    await sheet.enter("E2", "=FAIRBED.COMPARETWO(B2:B5,C2:C5)");
    sheet.click("E2");
    await settled();
    expect(desk.asked.at(-1)?.given).toEqual({
      usual: [[2000], [3000], [4000], [null]],
      new: [[3000], [5000], [4000], [null]],
    });
  });
});

describe("the explanation stays", () => {
  it("while cells among its plants are clicked, and lights up their dots", async () => {
    const { root, sheet } = await startedPane();
    sheet.click("C3");
    await settled();
    expect(root.querySelector(".lit")?.getAttribute("aria-label")).toBe("Straw, C3: 5000 g");
    expect(shownText(root)).toContain(finding);
  });

  it("while it is kept, and goes when it is let go", async () => {
    const { root, sheet } = await startedPane();
    buttonNamed(root, "Keep").click();
    sheet.click("H9");
    await settled();
    expect(shownText(root)).toContain(finding);
    buttonNamed(root, "Keep").click();
    await settled();
    expect(shownText(root)).not.toContain(finding);
  });

  it("not where its own cell holds another formula, or none, by now", async () => {
    const { root, sheet, desk } = await startedPane();
    buttonNamed(root, "Keep").click();
    await sheet.enter("E1", "=FAIRBED.UNEVENNESS(B1:B4)");
    await settled();
    expect(desk.asked.at(-1)?.id).toBe("UNEVENNESS");
    expect(buttonNamed(root, "Keep").getAttribute("aria-pressed")).toBe("true");
    await sheet.enter("E1", "=1");
    await settled();
    expect(shownText(root)).toContain("Or start with a question");
    await sheet.enter("E2", comparison);
    sheet.click("E2");
    await settled();
    expect(buttonNamed(root, "Keep").getAttribute("aria-pressed")).toBe("false");
  });

  it("while Excel refuses to tell what is selected, with what to do", async () => {
    const { root, sheet } = await startedPane();
    sheet.refuse({ trouble: "editing", where: "" });
    await settled();
    expect(shownText(root)).toContain("Press Enter to finish");
    expect(shownText(root)).toContain(finding);
    sheet.refuse(null);
    await settled();
    expect(shownText(root)).not.toContain("Press Enter to finish");
  });
});

it("a dot that is pressed selects its cell", async () => {
  const { root, sheet } = await startedPane();
  root.querySelector('[aria-label="Straw, C3: 5000 g"]')?.dispatchEvent(new MouseEvent("click", { bubbles: true }));
  expect((await sheet.selection()).address).toBe("C3");
});

it("a dot whose cell cannot be selected says why", async () => {
  const { root, sheet } = await startedPane();
  const editing: SheetTrouble = { trouble: "editing", where: "" };
  sheet.select = () => Promise.reject(editing);
  sheet.selection = () => Promise.reject(editing);
  root.querySelector('[aria-label="Straw, C3: 5000 g"]')?.dispatchEvent(new MouseEvent("click", { bubbles: true }));
  await settled();
  expect(shownText(root)).toContain("Press Enter to finish");
});

it("a refusal shows its sentence, and the code that the cell shows", async () => {
  const { root, sheet } = await startedPane();
  await sheet.enter("E2", '=FAIRBED.COMPARETWO(B1:B4,C1:C4,"nonsense")');
  sheet.click("E2");
  await settled();
  expect(shownText(root)).toContain("“nonsense” cannot be shown here.");
  expect(shownText(root)).toContain("#VALUE!");
});

it.each([
  ["=FAIRBED.COMPARETWO(B1:B4*2,C1:C4)", "The pane cannot read “usual”: B1:B4*2"],
  ["=FAIRBED.COMPARETWO(B1:B4,nowhere)", "The pane cannot read “new”: nowhere"],
  ["=FAIRBED.MOONPHASE(B1)", "This Fairbed has no function MOONPHASE."],
])("%s: says what it cannot do", async (formula, sentence) => {
  const { root, sheet } = await startedPane();
  await sheet.enter("E2", formula);
  sheet.click("E2");
  await settled();
  expect(shownText(root)).toContain(sentence);
});

it("of several calls the grower chooses which", async () => {
  const { root, sheet, desk } = await startedPane();
  await sheet.enter("E2", "=FAIRBED.PLANTSNEEDED(30%,FAIRBED.UNEVENNESS(B1:B4))");
  sheet.click("E2");
  await settled();
  expect(desk.asked.at(-1)).toMatchObject({ id: "PLANTSNEEDED", given: { change: [[0.3]], unevenness: [[0.25]] } });
  const select = root.querySelector<HTMLSelectElement>(".explanation select");
  if (select === null) throw new Error("no choice of calls");
  select.value = "1";
  select.dispatchEvent(new Event("change"));
  await settled();
  expect(desk.asked.at(-1)?.id).toBe("UNEVENNESS");
});

it("a cell that goes on showing another answer is said to be out of date", async () => {
  const { root, sheet } = await startedPane();
  vi.useFakeTimers({ toFake: ["setTimeout"], shouldAdvanceTime: true });
  sheet.show("E1", "Up, enough to matter");
  sheet.click("E1");
  await vi.advanceTimersByTimeAsync(500);
  expect(shownText(root)).not.toContain("Recalculate");
  await vi.advanceTimersByTimeAsync(1000);
  vi.useRealTimers();
  expect(shownText(root)).toContain("The cell shows another answer. Recalculate the sheet.");
});

it("a percent of ours in a General cell is shown as a percent on request", async () => {
  const { root, sheet } = await startedPane();
  await sheet.enter("E2", '=FAIRBED.COMPARETWO(B1:B4,C1:C4,"Change")');
  sheet.click("E2");
  await settled();
  buttonNamed(root, "Show as %").click();
  await settled();
  expect(sheet.at("E2")?.format).toBe("0.0%");
  expect(shownText(root)).not.toContain("fraction");
});

it("where the format cannot be set it says why", async () => {
  const { root, sheet } = await startedPane();
  const locked: SheetTrouble = { trouble: "protected", where: "E2" };
  sheet.format = () => Promise.reject(locked);
  await sheet.enter("E2", '=FAIRBED.COMPARETWO(B1:B4,C1:C4,"Change")');
  sheet.click("E2");
  await settled();
  buttonNamed(root, "Show as %").click();
  await settled();
  expect(shownText(root)).toContain("E2 is protected. Unprotect it first.");
});

it("labels from the sheet are text and never markup", async () => {
  const { root, sheet } = await startedPane();
  await sheet.enter("E2", '=FAIRBED.COMPARETWO(B1:B4*"<img src=x>",C1:C4)');
  sheet.click("E2");
  await settled();
  expect(root.querySelector("img")).toBeNull();
  expect(shownText(root)).toContain("<img src=x>");
});

describe("all the numbers", () => {
  async function choose(label: string) {
    const started = await startedPane();
    const fold = [...started.root.querySelectorAll("details")].find((one) => one.textContent === "All the numbers");
    fold?.querySelector("summary")?.click();
    await settled();
    const row = [...started.root.querySelectorAll("label.line")].find((one) => one.textContent?.startsWith(label));
    row?.querySelector("input")?.click();
    await settled();
    return started;
  }

  it("one is put into a free cell as a formula of its own, with its format", async () => {
    const { root, sheet } = await choose("Change");
    sheet.click("G2");
    await settled();
    expect(shownText(root)).toContain('=FAIRBED.COMPARETWO(B1:B4,C1:C4,"Change")');
    buttonNamed(root, "Put it there").click();
    await settled();
    expect(sheet.at("G2")).toMatchObject({ formula: `${comparison.slice(0, -1)},"Change")`, format: "0.0%" });
  });

  it("never over a filled cell unasked", async () => {
    const { root, sheet } = await choose("Change");
    sheet.fill("G2", [["mine"]]);
    sheet.click("G2");
    await settled();
    buttonNamed(root, "Put it there").click();
    await settled();
    expect(sheet.at("G2")?.value).toBe("mine");
    expect(shownText(root)).toContain("G2 is not empty. Replace it?");
    buttonNamed(root, "Replace").click();
    await settled();
    expect(sheet.at("G2")?.value).toBe(1 / 3);
  });

  it("not into the cell it comes from, nor among its plants", async () => {
    const { root, sheet } = await choose("Change");
    for (const address of ["E1", "B2"]) {
      sheet.click(address);
      await settled();
      expect(buttonNamed(root, "Put it there").disabled).toBe(true);
    }
  });

  it("on another sheet the ranges get their sheet's name", async () => {
    const { root, sheet } = await choose("Average, new");
    sheet.click("A1", "Report");
    await settled();
    buttonNamed(root, "Put it there").click();
    await settled();
    expect(sheet.at("A1", "Report")?.formula).toBe('=FAIRBED.COMPARETWO(Mulch!B1:B4,Mulch!C1:C4,"Average, new")');
  });
});

it("a cell without our call offers to start, and writes the formula", async () => {
  const { root, sheet } = await startedPane();
  sheet.click("B1:B4");
  sheet.click("H1");
  await settled();
  sheet.click("B1:B4");
  await settled();
  buttonNamed(root, "Take B1:B4").click();
  sheet.click("C1:C4");
  await settled();
  [...root.querySelectorAll("button")]
    .filter((one) => one.textContent === "Take C1:C4")
    .at(-1)
    ?.click();
  sheet.click("B3");
  await settled();
  expect(buttonNamed(root, "Put it there").disabled).toBe(true);
  sheet.click("G7");
  await settled();
  buttonNamed(root, "Put it there").click();
  await settled();
  expect(sheet.at("G7")?.formula).toBe(comparison);
  expect(shownText(root)).toContain(finding);
});

it("an error among the plants is named with its place", async () => {
  const { root, sheet } = await startedPane();
  sheet.fill("C3", [[{ error: "#N/A" }]]);
  await settled();
  expect(shownText(root)).toContain("C3 holds #N/A and was left out.");
  sheet.fill("B2", [[{ error: "#DIV/0!" }], [{ error: "#N/A" }], [{ error: "#REF!" }]]);
  await settled();
  expect(shownText(root)).toContain(
    "B2 holds #DIV/0! and was left out. B3 holds #N/A and was left out. B4 holds #REF! and was left out. So was 1 more error.",
  );
});
