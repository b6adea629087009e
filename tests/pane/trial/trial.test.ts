// @vitest-environment jsdom
import { beforeEach, expect, it, vi } from "vitest";
import { theDesk } from "../../../src/answers/theDesk";
import type { SheetTrouble } from "../../../src/host/sheet";
import { blankNotes, type TrialNotes } from "../../../src/nouns/trialNotes";
import { trial } from "../../../src/pane/trial/trial";
import { watch } from "../../../src/pane/watch";
import { type MemorySheet, memorySheet } from "../memorySheet";
import { settled } from "../startedPane";

const marlpitCorner: TrialNotes = {
  answers: { "drawn-by-lot": "yes", "one-stop-date": "dont-know" },
  crop: "courgettes",
  measure: "harvest per plant",
  unit: "grams",
  place: "Marlpit Corner",
  season: "2023",
  worthwhile: 0.07,
  stopDate: 45_168,
  onlySheet: "",
};

let sheet: MemorySheet;
let root: HTMLElement;
let open: () => void;

beforeEach(async () => {
  sheet = memorySheet(theDesk);
  root = document.createElement("div");
  document.body.replaceChildren(root);
  open = trial({ sheet, ...watch(sheet) }, root);
  open();
  await settled();
});

function labelled(label: string): HTMLInputElement {
  const found = [...root.querySelectorAll("label")].find(({ textContent }) => textContent === label);
  const input = root.querySelector<HTMLInputElement>(`[id="${found?.htmlFor}"]`);
  if (input === null) throw new Error(`no field "${label}"`);
  return input;
}

/** Types into a field and leaves it. */
async function fill(label: string, text: string): Promise<void> {
  const input = labelled(label);
  input.value = text;
  input.dispatchEvent(new Event("input", { bubbles: true }));
  input.dispatchEvent(new Event("change", { bubbles: true }));
  await settled();
}

function radio(question: string, answer: string): HTMLInputElement {
  const asked = [...root.querySelectorAll("fieldset")].find(({ textContent }) => textContent.includes(question));
  const input = asked?.querySelector<HTMLInputElement>(`input[value="${answer}"]`);
  if (input === undefined || input === null) throw new Error(`no answer "${answer}" to "${question}"`);
  return input;
}

async function choose(question: string, answer: string): Promise<void> {
  radio(question, answer).click();
  await settled();
}

const status = () => root.querySelector("[role=status]")?.textContent;

it("asks the eleven questions, and says that none is answered", () => {
  expect(root.querySelectorAll("fieldset legend")).toHaveLength(11);
  expect(root.textContent).toContain("0 of 11 answered");
  expect([...root.querySelectorAll("input")].some(({ checked }) => checked)).toBe(false);
});

it("keeps an answer as soon as it is chosen, and another one in its place", async () => {
  await choose("drawn by lot", "no");
  expect(await sheet.notes()).toEqual({ ...blankNotes, answers: { "drawn-by-lot": "no" } });
  expect(root.textContent).toContain("1 of 11 answered");
  expect(status()).toBe("Kept with this workbook.");
  await choose("drawn by lot", "dont-know");
  expect((await sheet.notes()).answers).toEqual({ "drawn-by-lot": "dont-know" });
});

it("says at once what an answer will be warned of, and no longer once it is another", async () => {
  const chosen = "If you chose which plants got which, your choice may be the cause.";
  await choose("drawn by lot", "no");
  expect(root.textContent).toContain(chosen);
  await choose("drawn by lot", "dont-know");
  expect(root.textContent).not.toContain(chosen);
  await sheet.keepNotes({ ...blankNotes, answers: { "drawn-by-lot": "no" } });
  open();
  await settled();
  expect(root.textContent).toContain(chosen);
});

it("keeps what is typed, each thing in its kind", async () => {
  await choose("drawn by lot", "yes");
  await choose("stop date", "dont-know");
  await fill("Crop and variety", " courgettes ");
  await fill("Main measure", "harvest per plant");
  await fill("Its unit", "grams");
  await fill("Place", "Marlpit Corner");
  await fill("Season", "2023");
  await fill("Change worth acting on, in %", "7");
  await fill("Stop date for all", "2023-08-30");
  expect(await sheet.notes()).toEqual(marlpitCorner);
});

it("the notes can be about one sheet, which is kept and shown though no formula stands on it", async () => {
  await sheet.enter("D1", "=FAIRBED.UPDOWN(1,2)");
  open();
  await settled();
  const select = root.querySelector("select");
  expect([...(select?.options ?? [])].map(({ text }) => text)).toEqual(["The whole workbook", "Mulch"]);
  if (select !== null) select.value = "Mulch";
  select?.dispatchEvent(new Event("input", { bubbles: true }));
  select?.dispatchEvent(new Event("change", { bubbles: true }));
  await settled();
  expect((await sheet.notes()).onlySheet).toBe("Mulch");
  await sheet.keepNotes({ ...blankNotes, onlySheet: "Nets" });
  open();
  await settled();
  expect(select?.value).toBe("Nets");
  await choose("drawn by lot", "no");
  expect((await sheet.notes()).onlySheet).toBe("Nets");
});

it("words in the cells that formulas read, and in the notes, call for lines on safety", async () => {
  expect(root.textContent).not.toContain("Safety");
  await fill("Main measure", "harvest after spraying");
  expect(root.textContent).toContain("Follow the product label");
  await fill("Main measure", "harvest");
  expect(root.textContent).not.toContain("Safety");
  sheet.fill("A1", [
    ["Plain water", "Nettle tea"],
    [2, 3],
    [3, 4],
  ]);
  await sheet.enter("D1", "=FAIRBED.COMPARETWO(A1:A3,B1:B3)+FAIRBED.COMPARETWO(nowhere,B1:B3)");
  open();
  await settled();
  expect(root.textContent).toContain("Raw manure can carry germs");
  expect(root.textContent).toContain("ask your local extension or advisory service");
});

it("shows what the workbook keeps when the part is opened, and when another workbook comes", async () => {
  await sheet.keepNotes(marlpitCorner);
  open();
  await settled();
  expect(labelled("Place").value).toBe("Marlpit Corner");
  expect(labelled("Change worth acting on, in %").value).toBe("7");
  expect(labelled("Stop date for all").value).toBe("2023-08-30");
  expect(radio("drawn by lot", "yes").checked).toBe(true);
  expect(root.textContent).toContain("2 of 11 answered");
  await sheet.keepNotes(blankNotes);
  sheet.click("B2");
  await settled();
  expect(labelled("Place").value).toBe("");
  expect(radio("drawn by lot", "yes").checked).toBe(false);
  expect(root.textContent).toContain("0 of 11 answered");
});

it("showing and keeping again changes nothing", async () => {
  await sheet.keepNotes({ ...marlpitCorner, worthwhile: -0.123 });
  open();
  await settled();
  await fill("Season", "2024");
  expect(await sheet.notes()).toEqual({ ...marlpitCorner, worthwhile: -0.123, season: "2024" });
});

it("keeps what is typed once the typing rests, and takes none of it away meanwhile", async () => {
  vi.useFakeTimers();
  const place = labelled("Place");
  place.value = "Marl";
  place.dispatchEvent(new Event("input", { bubbles: true }));
  sheet.click("B2");
  await vi.advanceTimersByTimeAsync(399);
  expect([place.value, (await sheet.notes()).place]).toEqual(["Marl", ""]);
  await vi.advanceTimersByTimeAsync(1);
  vi.useRealTimers();
  await settled();
  expect((await sheet.notes()).place).toBe("Marl");
});

it("a worthwhile change of 0 is not kept, and the field says what to type", async () => {
  await fill("Change worth acting on, in %", "0");
  expect((await sheet.notes()).worthwhile).toBeNull();
  expect(labelled("Change worth acting on, in %").getAttribute("aria-invalid")).toBe("true");
  expect(root.textContent).toContain("Not kept yet: type a number from −99 to 499 that is not 0.");
  await fill("Change worth acting on, in %", "-10");
  expect((await sheet.notes()).worthwhile).toBe(-0.1);
  expect(root.textContent).not.toContain("Not kept yet");
});

it("says when notes could not be kept, keeps nothing back, and tries once more when asked", async () => {
  const { keepNotes } = sheet;
  const notKept: SheetTrouble = { trouble: "not-kept", where: "" };
  sheet.keepNotes = () => Promise.reject(notKept);
  await choose("drawn by lot", "no");
  expect(status()).toBe("The trial's notes could not be kept with this workbook. Try once more.");
  sheet.click("B2");
  await settled();
  expect(radio("drawn by lot", "no").checked).toBe(true);
  sheet.keepNotes = keepNotes;
  [...root.querySelectorAll("button")].find(({ textContent }) => textContent === "Try once more")?.click();
  await settled();
  expect((await sheet.notes()).answers).toEqual({ "drawn-by-lot": "no" });
  expect(status()).toBe("Kept with this workbook.");
});

it("notes read while the grower answers do not take the answer away", async () => {
  const { notes } = sheet;
  let answer = (_: TrialNotes) => {};
  sheet.notes = () => new Promise((resolve) => (answer = resolve));
  open();
  await settled();
  await choose("drawn by lot", "no");
  answer(blankNotes);
  await settled();
  sheet.notes = notes;
  expect(radio("drawn by lot", "no").checked).toBe(true);
});
