// @vitest-environment jsdom
import { expect, it, vi } from "vitest";
import type { SheetTrouble } from "../../../src/host/sheet";
import type { Upkeep } from "../../../src/host/upkeep";
import { keepAsText } from "../../../src/pane/upkeep/keepAsText";
import { strangersNote } from "../../../src/pane/upkeep/strangersNote";
import { buttonNamed, settled, startedPane } from "../startedPane";

const stranger = { sheet: "Trial", address: "C1", formula: "=FAIRBED.UPDOWN(A1,A2)" };
const locked: SheetTrouble = { trouble: "protected", where: "C1" };

/** An upkeep of which a test says what it finds. */
function upkeep(part: Partial<Upkeep>): Upkeep {
  return {
    strangers: async () => [],
    enterAnew: async () => undefined,
    keepAsText: async () => null,
    bringBack: async () => undefined,
    ...part,
  };
}

it("nothing is shown while Excel knows all our formulas, nor when it does not answer", async () => {
  const failing = upkeep({ strangers: () => Promise.reject({ trouble: "unreadable", where: "" }) });
  for (const quiet of [upkeep({}), failing]) {
    const note = strangersNote(quiet);
    await settled();
    expect(note.hidden).toBe(true);
  }
});

it("formulas on a protected sheet are told with what to do", async () => {
  const note = strangersNote(
    upkeep({ strangers: async () => [stranger, stranger], enterAnew: () => Promise.reject(locked) }),
  );
  await settled();
  expect(note.textContent).toContain("2 cells show #NAME?");
  buttonNamed(note, "Enter them again").click();
  await settled();
  expect(note.textContent).toContain("C1 is protected. Unprotect it first.");
});

it("a cell without a formula is left alone, a protected one told, and only a kept one can come back", async () => {
  const { sheet } = await startedPane();
  sheet.click("B1:B4");
  const keep = vi.fn<Upkeep["keepAsText"]>(async () => null);
  const fold = keepAsText(sheet, upkeep({ keepAsText: keep })) as HTMLDetailsElement;
  fold.open = true;
  await settled();
  buttonNamed(fold, "Keep the selected cell as text").click();
  await settled();
  expect(fold.textContent).toContain("B1 holds no formula.");
  const back = [...fold.querySelectorAll("button")].at(-1);
  expect(back?.hidden).toBe(true);
  keep.mockRejectedValueOnce(locked);
  buttonNamed(fold, "Keep the selected cell as text").click();
  await settled();
  expect(fold.textContent).toContain("C1 is protected.");
  keep.mockResolvedValueOnce({ ...stranger, address: "C1" });
  buttonNamed(fold, "Keep the selected cell as text").click();
  await settled();
  expect(back?.hidden).toBe(false);
});

it("several formulas come back one by one, also after one of them was refused", async () => {
  const { sheet } = await startedPane();
  const keep = vi.fn<Upkeep["keepAsText"]>();
  const bring = vi.fn<Upkeep["bringBack"]>(async () => undefined);
  const fold = keepAsText(sheet, upkeep({ keepAsText: keep, bringBack: bring })) as HTMLDetailsElement;
  fold.open = true;
  await settled();
  for (const address of ["C1", "D1:D9"]) {
    keep.mockResolvedValueOnce({ ...stranger, address });
    buttonNamed(fold, "Keep the selected cell as text").click();
    await settled();
  }
  const back = buttonNamed(fold, "Bring the formula back");
  bring.mockRejectedValueOnce({ ...locked, where: "D1" });
  for (const said of ["D1 is protected.", "The formula is back in D1. Press once more for C1.", "back in C1."]) {
    expect(back.hidden).toBe(false);
    back.click();
    await settled();
    expect(fold.textContent).toContain(said);
  }
  expect(back.hidden).toBe(true);
  expect(bring.mock.calls.map(([{ address }]) => address)).toEqual(["D1:D9", "D1:D9", "C1"]);
});
