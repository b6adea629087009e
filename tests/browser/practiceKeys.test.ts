import type { Page } from "playwright-core";
import { beforeAll, expect, it } from "vitest";
import { openPracticePage, put, select, selected, settled, type, value } from "./practicePage";

const trial = "The trial";
const own = "Try your own";
let page: Page;

beforeAll(async () => {
  page = await openPracticePage();
});

it("answers a formula typed at the keyboard", async () => {
  await select(page, trial, "K2");
  await type(page, "=FAIRBED.UPDOWN(24,72)");
  expect(await value(page, trial, "K2")).toBe(2);
  expect(await selected(page)).toBe("The trial!K3");
});

it("shows the arguments' names while a formula is typed", async () => {
  await select(page, trial, "K4");
  await page.keyboard.type("=FAIRBED.UPDOWN(");
  await page
    .getByText(/FAIRBED\.UPDOWN\(.*usual/)
    .first()
    .waitFor();
  await page.keyboard.press("Escape");
});

it("changes the answer when a cell is edited, and changes it back on undo", async () => {
  await put(page, [trial, "K5"], "=FAIRBED.UPDOWN(L5,M5)");
  await put(page, [trial, "L5"], 10);
  await put(page, [trial, "M5"], 15);
  expect(await value(page, trial, "K5")).toBe(0.5);
  await select(page, trial, "M5");
  await type(page, "30");
  expect(await value(page, trial, "K5")).toBe(2);
  await page.keyboard.press("Control+z");
  await settled(page);
  expect(await value(page, trial, "K5")).toBe(0.5);
});

it("tells of a selection moved by the arrow keys", async () => {
  await select(page, trial, "B2");
  const before = await page.evaluate(() => fairbedPractice.notices());
  await page.keyboard.press("ArrowDown");
  await expect.poll(() => page.evaluate(() => fairbedPractice.notices())).toBeGreaterThan(before);
  expect(await selected(page)).toBe("The trial!B3");
});

it("tells of an edit and of its undo", async () => {
  await select(page, own, "G20");
  const notices = () => page.evaluate(() => fairbedPractice.notices());
  const before = await notices();
  await type(page, "7");
  await expect.poll(notices).toBeGreaterThan(before);
  const after = await notices();
  await page.keyboard.press("Control+z");
  await expect.poll(() => value(page, own, "G20")).toBe(null);
  await expect.poll(notices).toBeGreaterThan(after);
});

it.each([
  ["the text of another spreadsheet", "12\t15.5\r\n13\tlost\r\n", ""],
  [
    "its table",
    "12\t15.5\r\n13\tlost\r\n",
    "<table><tr><td>12</td><td>15.5</td></tr><tr><td>13</td><td>lost</td></tr></table>",
  ],
])("takes pasted columns as numbers and words: %s", async (_what, plain, table) => {
  await select(page, own, "A2");
  await page.evaluate(
    ([text, html]) => {
      const clipboardData = new DataTransfer();
      clipboardData.setData("text/plain", text);
      if (html !== "") clipboardData.setData("text/html", html);
      const paste = new ClipboardEvent("paste", { clipboardData, bubbles: true, cancelable: true });
      document.activeElement?.dispatchEvent(paste);
    },
    [plain, table] as const,
  );
  const cells = () => page.evaluate(async () => (await fairbedPractice.port.read("A2:B3", "Try your own")).cells);
  await expect.poll(cells).toEqual([
    [12, 15.5],
    [13, "lost"],
  ]);
  await page.keyboard.press("Control+z");
  await expect.poll(cells).toEqual([
    [null, null],
    [null, null],
  ]);
});
