import { expect, it } from "vitest";
import { theDesk } from "../../../src/answers/theDesk";
import { blankNotes } from "../../../src/nouns/trialNotes";
import { recordSheet } from "../../../src/pane/record/recordSheet";
import { plannedOn, withPlan } from "../../../src/pane/tell/plannedOn";
import { drawLots } from "../../../src/questions/drawLots";
import { found, given } from "../../questions/range";
import { memorySheet } from "../memorySheet";

const drawn = found(drawLots(given({ draw_number: 1431, treatments: ["Bare soil", "Straw"], plants_each: 4 })));
const settled = { question: "Does straw give more?", measure: "Total per plant (g)", worthwhile: 0.1 };
const plan = recordSheet(theDesk, { ...settled, drawn, stopDate: 46_264, writtenOn: 46_151 });

it("reads from a record sheet what was settled before planting", async () => {
  const sheet = memorySheet(theDesk);
  const name = await sheet.add(plan);
  expect(await plannedOn(sheet, name)).toEqual({
    ...settled,
    measure: "Total per plant",
    drawNumber: 1431,
    stopDate: 46_264,
  });
});

it("any other sheet says nothing, whatever stands in its cells", async () => {
  const sheet = memorySheet(theDesk);
  sheet.fill("E4", [["a question"], ["kg"], [0.2], [45_000], [""], [7]]);
  const nothing = { question: "", drawNumber: null, measure: "", worthwhile: null, stopDate: null };
  expect(await plannedOn(sheet, "Mulch")).toEqual(nothing);
});

it.each([
  ["Total per plant", "total per plant"],
  ["Kilos of Romanesco", "kilos of Romanesco"],
  ["NPK in the leaves", "NPK in the leaves"],
  ["", ""],
])("the plan's measure “%s” stands within a sentence as “%s”", (measure, told) => {
  const planned = { question: "", drawNumber: null, measure, worthwhile: null, stopDate: null };
  expect(withPlan(blankNotes, planned).measure).toBe(told);
});

it("the trial's notes come before the plan", () => {
  const planned = { question: "", drawNumber: 1, measure: "Total per plant", worthwhile: 0.1, stopDate: 46_264 };
  expect(withPlan(blankNotes, planned)).toEqual({
    ...blankNotes,
    measure: "total per plant",
    worthwhile: 0.1,
    stopDate: 46_264,
  });
  const notes = { ...blankNotes, measure: "pods", worthwhile: -0.2, stopDate: 46_000 };
  expect(withPlan(notes, planned)).toEqual(notes);
});
