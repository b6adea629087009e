// @vitest-environment jsdom
import { beforeEach, expect, it, vi } from "vitest";
import { theDesk } from "../../src/answers/theDesk";
import type { Context } from "../../src/pane/context";
import { type Placing, placing } from "../../src/pane/placing";
import { watch } from "../../src/pane/watch";
import { type MemorySheet, memorySheet } from "./memorySheet";
import { buttonNamed, settled } from "./startedPane";

let sheet: MemorySheet;
let place: Placing;
const done = vi.fn();

/** Puts a number where the grower clicks; "mine" stands in C1. */
beforeEach(async () => {
  done.mockReset();
  sheet = memorySheet(theDesk);
  sheet.fill("C1", [["mine"]]);
  const context: Context = {
    sheet,
    desk: theDesk,
    ...watch(sheet),
    comparisons: async () => 1,
    announce: () => {},
  };
  place = placing(context, { entries: (target) => [{ ...target, content: 7, format: "0" }], done });
  context.watched.listen(place.refresh);
  document.body.replaceChildren(place.root);
  sheet.click("C1");
  await settled();
});

it("pressed twice, writes once", async () => {
  sheet.click("D1");
  await settled();
  const write = vi.spyOn(sheet, "write");
  const put = buttonNamed(place.root, "Put it there");
  put.click();
  put.click();
  await settled();
  expect(write).toHaveBeenCalledTimes(1);
  expect(done).toHaveBeenCalledTimes(1);
  expect(sheet.at("D1")?.value).toBe(7);
  expect(place.root.textContent).not.toContain("Replace it?");
});

it("replaces the cell that it asked about, and no other that was clicked meanwhile", async () => {
  sheet.fill("D1", [["mine too"]]);
  const { write } = sheet;
  let answer = () => {};
  sheet.write = (entries, over) => new Promise<void>((resolve) => (answer = resolve)).then(() => write(entries, over));
  buttonNamed(place.root, "Put it there").click();
  sheet.click("D1");
  await settled();
  answer();
  await settled();
  expect(place.root.textContent).toContain("C1 is not empty. Replace it?");
  sheet.write = write;
  buttonNamed(place.root, "Replace").click();
  await settled();
  expect([sheet.at("C1")?.value, sheet.at("D1")?.value]).toEqual([7, "mine too"]);
});

it("asks no more once another cell is clicked", async () => {
  buttonNamed(place.root, "Put it there").click();
  await settled();
  expect(place.root.textContent).toContain("C1 is not empty. Replace it?");
  sheet.click("D1");
  await settled();
  expect(place.root.textContent).toContain("Goes to Mulch!D1.");
  expect(() => buttonNamed(place.root, "Replace")).toThrow();
});

it("says what the sheet refuses, and writes nothing", async () => {
  sheet.write = () => Promise.reject({ trouble: "protected", where: "C1" });
  buttonNamed(place.root, "Put it there").click();
  await settled();
  expect(place.root.textContent).toContain("C1 is protected. Unprotect it first.");
  expect(done).not.toHaveBeenCalled();
});
