// @vitest-environment jsdom
import { beforeEach, expect, it } from "vitest";
import { theDesk } from "../../../src/answers/theDesk";
import type { Context } from "../../../src/pane/context";
import { type LayoutPart, layoutPart } from "../../../src/pane/record/layoutPart";
import { watch } from "../../../src/pane/watch";
import { type MemorySheet, memorySheet } from "../memorySheet";
import { settled } from "../startedPane";

let sheet: MemorySheet;
let part: LayoutPart;

beforeEach(() => {
  sheet = memorySheet(theDesk);
  const context: Context = { sheet, desk: theDesk, ...watch(sheet), comparisons: async () => 1, announce: () => {} };
  part = layoutPart(context);
  document.body.replaceChildren(part.root);
  part.follow({ room: 16, ways: 2, beds: "one each", unevenness: 0.3, hoped: 0.3, worthwhile: 0.1, chance: 0.8 });
});

function type(label: string, text: string): void {
  const found = [...part.root.querySelectorAll("label")].find(({ textContent }) => textContent === label);
  const input = part.root.querySelector<HTMLInputElement>(`[id="${found?.htmlFor}"]`);
  if (input === null) throw new Error(`no field "${label}"`);
  input.value = text;
  input.dispatchEvent(new Event("input", { bubbles: true }));
}

it("a treatment that calls for a line on safety has it before planting, and not once it is another", () => {
  type("New way 1", "Nettle tea");
  expect(part.root.textContent).toContain("Raw manure can carry germs");
  type("New way 1", "Straw");
  expect(part.root.textContent).not.toContain("Safety");
  type("The question", "Does soap keep aphids off?");
  expect(part.root.textContent).toContain("Follow the product label");
});

it("one press draws lots and adds the sheet, and a name that is missing is asked for first", async () => {
  type("New way 1", " ");
  part.root.querySelector("button")?.click();
  await settled();
  expect(sheet.added).toEqual([]);
  expect(part.root.textContent).toContain("Name everything you compare, the usual first.");
  type("New way 1", "Straw");
  part.root.querySelector("button")?.click();
  await settled();
  expect(sheet.added).toEqual(["Trial plan"]);
  expect(sheet.at("C13", "Trial plan")?.value).toMatch(/^(Usual|Straw)$/);
});
