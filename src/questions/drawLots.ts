import { drawLots as drawSpots, type Layout } from "../methods/drawLots";
import type { Caution } from "../nouns/caution";
import type { DrawnLots, Spot } from "../nouns/findings/drawnLots";
import { lazy } from "../nouns/lazy";
import { isProblem, type Problem } from "../nouns/problem";
import { missing } from "../ranges/option";
import { readWhole } from "../ranges/readWhole";
import { allRead } from "./allRead";
import type { Given } from "./given";
import { readBeds } from "./readBeds";
import { readDrawNumber } from "./readDrawNumber";
import { readTreatmentNames } from "./readTreatmentNames";

const MOST_SPOTS = 2000;
/** Fewer plants of each treatment cannot settle anything. */
const ENOUGH = 4;

/** Which plant gets which treatment, by lot? */
export function drawLots(given: Given): DrawnLots | Problem {
  const argument = "plants_each";
  const read = allRead({
    treatments: readTreatmentNames(given.treatments),
    plantsEach: readWhole(given.plants_each, { argument, low: 1, high: null, fallback: missing(argument) }),
    drawNumber: readDrawNumber(given.draw_number),
    beds: readBeds(given.beds),
  });
  if (isProblem(read)) return read;
  const { treatments, plantsEach, drawNumber } = read;
  const beds = read.beds === "one each" ? plantsEach : read.beds;
  if (plantsEach % (beds ?? 1) !== 0) return { problem: "not-a-multiple", plants: plantsEach, beds: beds ?? 1 };
  const spots = treatments.length * plantsEach;
  if (spots > MOST_SPOTS) return { problem: "too-many-spots", spots, most: MOST_SPOTS };
  return {
    finding: "drawn-lots",
    treatments,
    plantsEach,
    beds,
    drawNumber,
    spots: drawNumber === null ? [] : drawnSpots({ treatments, plantsEach, beds }, drawNumber),
    cautions: lazy(() => cautionsOf(plantsEach)),
  };
}

function drawnSpots(plan: Pick<DrawnLots, "treatments" | "plantsEach" | "beds">, drawNumber: number): readonly Spot[] {
  const beds = plan.beds ?? 1;
  const layout: Layout = { treatments: plan.treatments.length, eachInBed: plan.plantsEach / beds, beds };
  return drawSpots(layout, drawNumber).flatMap((order, at) =>
    order.map((treatment, place) => {
      const bed = plan.beds === null ? null : at + 1;
      const spot = place + 1;
      const label = bed === null ? `P${spot}` : `B${bed}-${spot}`;
      return { spot, bed, treatment: plan.treatments[treatment] ?? "", label };
    }),
  );
}

function cautionsOf(plantsEach: number): readonly Caution[] {
  return [...(plantsEach < ENOUGH ? [{ caution: "C28" } as const] : []), { caution: "C12" }];
}
