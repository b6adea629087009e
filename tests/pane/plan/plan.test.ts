// @vitest-environment jsdom
import { expect, it } from "vitest";
import { theDesk } from "../../../src/answers/theDesk";
import { planEntries } from "../../../src/pane/plan/planEntries";
import { type PlanFigures, planFigures } from "../../../src/pane/plan/planFigures";
import { type PlanQuestion, plantsEach } from "../../../src/pane/plan/planQuestion";
import { unevenChoices } from "../../../src/pane/plan/unevenChoices";
import { waysOut } from "../../../src/pane/plan/waysOut";
import { buttonNamed, settled, shownText, startedPane } from "../startedPane";

const question: PlanQuestion = {
  room: 24,
  ways: 2,
  beds: "none",
  unevenness: 0.3,
  hoped: 0.3,
  worthwhile: 0.1,
  chance: 0.8,
};

it.each([
  [{ room: 24, ways: 2, beds: "none" } as const, 12],
  [{ room: 25, ways: 3, beds: "one each" } as const, 8],
  [{ room: 24, ways: 3, beds: 3 }, 6],
  [{ room: 20, ways: 2, beds: 8 }, 8],
  [{ room: 5, ways: 3, beds: "none" } as const, 1],
])("%o gives %d plants each", (given, each) => {
  expect(plantsEach(given)).toBe(each);
});

/** Smallest increases at an unevenness of 30 %, to whole percents, computed with R's noncentral t for the contract. */
it("shows the smallest change that R gives for 12, 6 and 4 plants each", () => {
  for (const [room, percent] of [
    [24, 45],
    [12, 78],
    [8, 124],
  ] as const) {
    const figures = planFigures(theDesk, { ...question, room }) as PlanFigures;
    expect(Math.round((figures.smallest ?? 0) * 100)).toBe(percent);
  }
});

it("needs 23 plants each, and 26 with 10 % lost, to see +30 % at an unevenness of 30 %", () => {
  // 23 is R's figure (grow-with-yield rule); 23 / 0.9 rounded up is 26.
  expect((planFigures(theDesk, question) as PlanFigures).needed).toBe(26);
});

it("has no figures for fewer than two plants each", () => {
  expect(planFigures(theDesk, { ...question, room: 3 })).toBeNull();
});

it("hands on what the desk refuses", () => {
  expect(planFigures(theDesk, { ...question, unevenness: 5 })).toMatch(/unevenness/i);
});

it("offers fewer treatments, beds, a second season or a demonstration, each with its figure", () => {
  const ways = waysOut(theDesk, { ...question, ways: 4 });
  expect(ways.map((way) => way.split(" ").slice(0, 2).join(" "))).toEqual([
    "Compare 2",
    "Put one",
    "Grow the",
    "Call it",
  ]);
  for (const way of ways.slice(0, 3)) expect(way).toMatch(/\d+ in 100\.$/);
});

it("offers neither fewer treatments to two nor beds to a plan in beds", () => {
  expect(waysOut(theDesk, { ...question, beds: "one each" })).toHaveLength(2);
});

it("writes the formulas beside their labels", () => {
  const given = { question: { ...question, ways: 3, beds: 2 }, unevennessOn: () => "30%" };
  expect(planEntries(theDesk, given, { sheet: "Mulch", address: "B7" })).toEqual([
    { sheet: "Mulch", address: "B7", content: "Plants needed of each, a gain of 30 %", format: "General" },
    { sheet: "Mulch", address: "C7", content: "=FAIRBED.PLANTSNEEDED(30%,30%,,3,2)", format: "0" },
    { sheet: "Mulch", address: "B8", content: "Smallest change that shows, 8 each", format: "General" },
    { sheet: "Mulch", address: "C8", content: "=FAIRBED.SMALLESTCHANGE(8,30%,,3,2)", format: "0.0%" },
    { sheet: "Mulch", address: "B9", content: "Chance to see a gain of 30 %", format: "General" },
    { sheet: "Mulch", address: "C9", content: "=FAIRBED.CHANCETOSEE(30%,8,30%,,3,2)", format: "0.0%" },
  ]);
});

it("every unevenness offered is a fraction with its source", () => {
  for (const { unevenness, source } of unevenChoices) {
    expect(unevenness).toBeGreaterThan(0.05);
    expect(unevenness).toBeLessThan(1);
    expect(source.length).toBeGreaterThan(10);
  }
});

async function openPlan() {
  const started = await startedPane();
  buttonNamed(started.root, "Plan").click();
  await settled();
  return started;
}

it("takes the unevenness from plants in the sheet, and writes the formula that measures it", async () => {
  const { root, sheet, desk } = await openPlan();
  const select = [...root.querySelectorAll("select")].find((one) => one.textContent?.includes("Measure it"));
  if (select === undefined) throw new Error("no choice of unevenness");
  select.value = "own";
  select.dispatchEvent(new Event("change", { bubbles: true }));
  sheet.click("B1:B4");
  await settled();
  buttonNamed(root, "Take B1:B4").click();
  await settled();
  expect(desk.asked.find(({ id }) => id === "UNEVENNESS")?.given).toEqual({
    amounts: [["Bare soil"], [2000], [3000], [4000]],
    show: [["plan with"]],
  });
  expect(shownText(root)).toContain("Plan with 25 %");
});

it("plans with the plants that were taken last, whichever are read first", async () => {
  const { root, sheet } = await openPlan();
  const select = [...root.querySelectorAll("select")].find((one) => one.textContent?.includes("Measure it"));
  if (select === undefined) throw new Error("no choice of unevenness");
  select.value = "own";
  select.dispatchEvent(new Event("change", { bubbles: true }));
  const { read } = sheet;
  const slow: (() => void)[] = [];
  sheet.read = async (reference, home) => {
    if (reference.includes("B1:B4")) await new Promise<void>((resolve) => slow.push(resolve));
    return read(reference, home);
  };
  for (const range of ["B1:B4", "ZZ"]) {
    sheet.click(range);
    await settled();
    buttonNamed(root, `Take ${range}`).click();
    await settled();
  }
  for (const resolve of slow) resolve();
  await settled();
  expect(shownText(root)).not.toContain("Plan with 25 %");
});

it("asks for what is missing instead of planning with it", async () => {
  const { root } = await openPlan();
  const room = root.querySelector<HTMLInputElement>('input[type="number"]');
  if (room === null) throw new Error("no field");
  room.value = "";
  room.dispatchEvent(new Event("input", { bubbles: true }));
  await new Promise((resolve) => setTimeout(resolve, 300));
  expect(shownText(root)).toContain("Plants I have room for: type a whole number from 4 to 2000.");
  expect(room.getAttribute("aria-invalid")).toBe("true");
});
