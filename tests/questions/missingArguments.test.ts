import { expect, it } from "vitest";
import { chanceToSee } from "../../src/questions/chanceToSee";
import { compareMany } from "../../src/questions/compareMany";
import { compareTwo } from "../../src/questions/compareTwo";
import { drawLots } from "../../src/questions/drawLots";
import type { Given } from "../../src/questions/given";
import { halfPicked } from "../../src/questions/halfPicked";
import { lookOver } from "../../src/questions/lookOver";
import { manyTrials } from "../../src/questions/manyTrials";
import { perPlant } from "../../src/questions/perPlant";
import { pickCurve } from "../../src/questions/pickCurve";
import { plainNumber } from "../../src/questions/plainNumber";
import { plantsNeeded } from "../../src/questions/plantsNeeded";
import { smallestChange } from "../../src/questions/smallestChange";
import { tallyPicks } from "../../src/questions/tallyPicks";
import { totalsOnly } from "../../src/questions/totalsOnly";
import { unevenness } from "../../src/questions/unevenness";
import { upDown } from "../../src/questions/upDown";
import { worthIt } from "../../src/questions/worthIt";
import { found, given } from "./range";

type Arguments = Parameters<typeof given>[0];

const averages = { usual: [4, 5, 6, 5], new: [5, 6, 7, 7] };
const log = { plants: ["B1", "B2"], dates: ["2023-07-01", "2023-07-08"], amounts: [5, 6] };

interface Call {
  readonly ask: (given: Given) => object;
  readonly needed: Arguments;
  readonly more?: Arguments;
}

/** What each question cannot do without, and what more it takes to answer. */
const calls: readonly Call[] = [
  { ask: chanceToSee, needed: { change: 0.3, plants_each: 8 }, more: { unevenness: 0.25 } },
  { ask: compareMany, needed: { amounts: [4, 5, 6, 7], treatments: ["Bare", "Bare", "Straw", "Straw"] } },
  { ask: compareTwo, needed: averages },
  { ask: drawLots, needed: { treatments: ["Bare", "Straw"], plants_each: 6 }, more: { draw_number: 1431 } },
  { ask: halfPicked, needed: log },
  { ask: lookOver, needed: { cells: [4, 5, "6 kg"] } },
  { ask: manyTrials, needed: { usual_averages: [4, 5, 6], new_averages: [5, 6, 8] } },
  { ask: perPlant, needed: { amounts: [4, 5] } },
  { ask: pickCurve, needed: { treatments: ["Bare", "Straw"], dates: log.dates, amounts: log.amounts } },
  { ask: plainNumber, needed: { cells: ["4 kg"] } },
  { ask: plantsNeeded, needed: { change: 0.3 }, more: { unevenness: 0.25 } },
  { ask: smallestChange, needed: { plants_each: 8 }, more: { unevenness: 0.25 } },
  { ask: tallyPicks, needed: { plants: log.plants, amounts: log.amounts } },
  { ask: totalsOnly, needed: { usual_total: 40, usual_plants: 8, new_total: 50, new_plants: 8 } },
  { ask: unevenness, needed: { amounts: [4, 5] } },
  { ask: upDown, needed: averages },
  { ask: worthIt, needed: { ...averages, price: 2, extra_cost: 1 } },
];

it.each(calls)("$ask.name answers when given $needed, and names each of them that is left out", (question) => {
  const { ask, needed, more = {} } = question;
  const call = { ...given(needed), ...given(more) };
  expect(found(ask(call))).toHaveProperty("finding");
  for (const argument of Object.keys(needed)) {
    const problem = { problem: "missing-argument", argument };
    expect(ask({ ...call, [argument]: null }), argument).toEqual(problem);
    expect(ask({ ...call, [argument]: undefined }), argument).toEqual(problem);
  }
});
