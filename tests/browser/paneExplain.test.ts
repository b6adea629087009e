import type { Locator, Page } from "playwright-core";
import { beforeAll, expect, it } from "vitest";
import { openPracticePage, put, select, selected, type, value } from "./practicePage";

let page: Page;
let pane: Locator;

beforeAll(async () => {
  page = await openPracticePage();
  pane = page.locator("#pane");
});

/** The finding as the pane words it, once the pane explains that cell. */
async function finding(address: string): Promise<string> {
  await expect.poll(() => pane.locator(".pin .cell").textContent()).toBe(address);
  return (await pane.locator(".finding:visible").textContent())?.replaceAll("\u00a0", " ") ?? "";
}

/** Selects cells of the trial downward, by keyboard as a grower may. */
async function selectColumn(first: string, rows: number, sheet = "The trial"): Promise<void> {
  await select(page, sheet, first);
  await page.keyboard.press("F6");
  await page.keyboard.press("Escape");
  for (let row = 1; row < rows; row += 1) await page.keyboard.press("Shift+ArrowDown");
}

it("explains the selected answer: finding, a line to repeat, luck, what to look out for, what next", async () => {
  await select(page, "The trial", "H4");
  expect(await finding("H4")).toMatch(
    /^Straw gave 4350 a plant \(7 plants\) and Bare soil 3060 \(7 plants\), so 42 % more/,
  );
  for (const part of ["You can say", "Could it be luck?", "Look out for", "Next"]) {
    expect(await pane.getByRole("heading", { name: part }).isVisible(), part).toBe(true);
  }
});

it("follows the arrow keys", async () => {
  await select(page, "The trial", "H4");
  await page.keyboard.press("F6");
  await page.keyboard.press("Escape");
  await page.keyboard.press("ArrowUp");
  expect(await finding("H3")).toMatch(/It is not settled: there may be a gain worth having/);
});

it("an edited cell changes answer and explanation together", async () => {
  await put(page, ["Try your own", "H1"], "=FAIRBED.UPDOWN('The trial'!B2,'The trial'!C2)");
  await select(page, "Try your own", "H1");
  expect(await finding("H1")).toBe("3249 is 1.44 times 2252: up 44 %.");
  await put(page, ["The trial", "C2"], 4504);
  expect(await value(page, "Try your own", "H1")).toBe(1);
  await expect.poll(() => finding("H1")).toBe("4504 is 2 times 2252: up 100 %, not 200 %.");
  await put(page, ["The trial", "C2"], 3249);
});

it("a refused call shows its sentence in the pane", async () => {
  await put(page, ["Try your own", "H2"], '=FAIRBED.UPDOWN(24,72,"percent")');
  await select(page, "Try your own", "H2");
  await expect.poll(() => pane.textContent()).toContain("“percent” cannot be shown here. These can: answer; table");
  expect(await page.evaluate(() => fairbedPractice.shown("Try your own", "H2"))).toBe("#VALUE!");
});

it("starts a comparison: two ranges from the selection, and the formula where the grower clicks", async () => {
  await select(page, "The trial", "J2");
  await expect.poll(() => pane.getByLabel("What do you want to know?").isVisible()).toBe(true);
  await selectColumn("B1", 9);
  await pane.getByRole("button", { name: "Take B1:B9" }).first().click();
  await selectColumn("D1", 9);
  await pane.getByRole("button", { name: "Take D1:D9" }).last().click();
  await select(page, "The trial", "J4");
  await expect.poll(() => pane.locator(".preview:visible").textContent()).toBe("=FAIRBED.COMPARETWO(B1:B9,D1:D9)");
  await pane.getByRole("button", { name: "Put it there" }).first().click();
  await expect.poll(() => value(page, "The trial", "J4")).toBe("Not settled");
  expect(await finding("J4")).toMatch(/^Woodchip gave 3070 a plant/);
});

it("copies the line to repeat in public", async () => {
  await page.context().grantPermissions(["clipboard-read", "clipboard-write"]);
  await select(page, "The trial", "H4");
  await finding("H4");
  await pane.getByRole("button", { name: /Copy/ }).click();
  await expect
    .poll(() => page.evaluate(() => navigator.clipboard.readText()))
    .toMatch(/^Here, Straw gave 42 % more per plant than Bare soil/);
});

it("puts one of the numbers into a cell, and asks before it replaces a filled one", async () => {
  await select(page, "The trial", "H3");
  await finding("H3");
  await pane.getByText("All the numbers").click();
  await pane.getByRole("radio", { name: /^p value/ }).check();
  await select(page, "The trial", "H2");
  await pane.getByRole("button", { name: "Put it there" }).click();
  await expect.poll(() => pane.getByRole("button", { name: "Replace" }).isVisible()).toBe(true);
  expect(await value(page, "The trial", "H2")).toBeCloseTo(0.4414, 4);
  await select(page, "The trial", "J6");
  await pane.getByRole("button", { name: "Put it there" }).click();
  await expect.poll(() => value(page, "The trial", "J6")).toBeCloseTo(0.05288, 5);
});

it("says of plants compared without their beds that within beds is what counts, and puts that comparison in", async () => {
  await select(page, "The trial", "H3");
  await finding("H3");
  await expect.poll(() => pane.textContent()).toContain("You planted in beds. Compare within them: that one counts");
  await pane.getByRole("button", { name: "Compare within beds" }).click();
  await select(page, "The trial", "J8");
  await expect
    .poll(() => pane.locator(".preview:visible").textContent())
    .toBe('=FAIRBED.COMPARETWO(B1:B9,C1:C9,,"beds")');
  await pane.getByRole("button", { name: "Put it there" }).click();
  await expect.poll(() => value(page, "The trial", "J8")).toBe("Up, enough to matter");
  await select(page, "The trial", "J8");
  expect(await finding("J8")).toMatch(/^Straw gave 4350 a plant \(7 plants\)/);
  expect(await pane.textContent()).not.toContain("You planted in beds.");
});

it("works by keyboard alone: to the pane, through its parts, and back", async () => {
  await select(page, "The trial", "H4");
  await finding("H4");
  await page.keyboard.press("F6");
  await page.keyboard.press("Tab");
  const focused = () => page.evaluate(() => document.activeElement?.textContent?.trim() ?? "");
  await expect.poll(focused).toBe("Explain");
  await page.keyboard.press("Home");
  await expect.poll(() => pane.getByRole("tab", { name: "Plan" }).getAttribute("aria-selected")).toBe("true");
  for (const name of ["Trial", "Check", "Explain"]) {
    await page.keyboard.press("ArrowRight");
    await expect.poll(() => pane.getByRole("tab", { name }).getAttribute("aria-selected")).toBe("true");
  }
  await page.keyboard.press("Escape");
  await page.keyboard.press("ArrowDown");
  expect(await selected(page)).toBe("The trial!H5");
});

it.each(["<img src=x onerror=document.title='taken'>", '=HYPERLINK("https://example.org","Straw")'])(
  "a heading such as %s is text in the pane",
  async (label) => {
    const title = await page.title();
    await select(page, "Try your own", "M1");
    await type(page, label.startsWith("=") ? `'${label}` : label);
    for (const [at, amount] of [3, 4, 5, 4].entries()) {
      await put(page, ["Try your own", `M${at + 2}`], amount);
      await put(page, ["Try your own", `N${at + 2}`], amount + 1);
    }
    await put(page, ["Try your own", "O1"], "=FAIRBED.COMPARETWO(M1:M5,N2:N5)");
    await select(page, "Try your own", "O1");
    expect(await finding("O1")).toContain(label.slice(0, 10));
    expect(await pane.locator("img, a[href*=example]").count()).toBe(0);
    expect(await page.title()).toBe(title);
  },
);

it("explains several treatments: pictures, a table, the pairs on request; cell and pane follow the sheet", async () => {
  const sheet = "Plant by plant";
  await select(page, sheet, "G2");
  expect(await finding("G2")).toMatch(/Straw gave 46 % more than Bare soil: enough to matter/);
  expect(await pane.locator("figure:visible").count()).toBe(2);
  expect(await pane.locator("figure:visible svg .band").count()).toBe(1);
  expect(await pane.getByRole("row").allTextContents()).toContain("Straw714390+46\u00a0%13\u00a0% to 95\u00a0%");
  await pane.getByText("All 6 pairs").click();
  await expect.poll(() => pane.getByRole("table").last().textContent()).toContain("Straw and Bare soil1370");
  await put(page, [sheet, "D4"], "lost");
  await expect.poll(() => pane.textContent()).toContain("There were 29 plants in 8 beds.");
  await put(page, [sheet, "D4"], 3249);
  await put(page, [sheet, "C5"], "Hay");
  await expect.poll(() => pane.textContent()).toContain("4 treatments were each set against Bare soil.");
  await put(page, [sheet, "C5"], "Grass clippings");
  await put(page, [sheet, "B6"], "");
  await expect.poll(() => pane.textContent()).toContain("There were 30 plants in 8 beds.");
  await put(page, [sheet, "B7"], "");
  await expect.poll(() => pane.textContent()).toContain("There were 29 plants in 8 beds.");
  await put(page, [sheet, "B6"], 2);
  await put(page, [sheet, "B7"], 2);
  await expect.poll(() => value(page, sheet, "G2")).toBe("Straw up; 2 not settled");
});

it("a dot of the beds picture leads to its cell, by keyboard too", async () => {
  const sheet = "Plant by plant";
  await select(page, sheet, "G2");
  await finding("G2");
  await pane.getByRole("button", { name: "Straw, bed 1, D4: 3250 g" }).focus();
  await page.keyboard.press("Enter");
  await expect.poll(() => selected(page)).toBe(`${sheet}!D4`);
});

it("starts a comparison of several: names the treatments it finds and asks which is the usual", async () => {
  const sheet = "Plant by plant";
  await select(page, sheet, "F25");
  await pane.getByLabel("What do you want to know?").selectOption({ label: "Which of several treatments did better?" });
  for (const [at, column] of ["D", "C", "B"].entries()) {
    await selectColumn(`${column}1`, 33, sheet);
    await pane
      .getByRole("button", { name: `Take ${column}1:${column}33` })
      .nth(at)
      .click();
  }
  await expect
    .poll(() => pane.textContent())
    .toContain("Treatments found: Bare soil, Grass clippings, Straw, Woodchip.");
  await pane.getByLabel("Which is the usual?").selectOption("Straw");
  await select(page, sheet, "F25");
  await expect
    .poll(() => pane.locator(".preview:visible").textContent())
    .toBe('=FAIRBED.COMPAREMANY(D1:D33,C1:C33,,B1:B33,"Straw")');
  await pane.getByLabel("Which is the usual?").selectOption("Bare soil");
  await pane.getByRole("button", { name: "Put it there" }).first().click();
  await expect.poll(() => value(page, sheet, "F25")).toBe("Straw up; 2 not settled");
});
