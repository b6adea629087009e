import { chanceToSeeFunction } from "./chanceToSee";
import { compareManyFunction } from "./compareMany";
import { compareTwoFunction } from "./compareTwo";
import type { Desk } from "./desk";
import { drawLotsFunction } from "./drawLots";
import { halfPickedFunction } from "./halfPicked";
import { lookOverFunction } from "./lookOver";
import { manyTrialsFunction } from "./manyTrials";
import { perPlantFunction } from "./perPlant";
import { pickCurveFunction } from "./pickCurve";
import { plainNumberFunction } from "./plainNumber";
import { plantsNeededFunction } from "./plantsNeeded";
import { type Sealed, seal } from "./seal";
import { smallestChangeFunction } from "./smallestChange";
import { tallyPicksFunction } from "./tallyPicks";
import { totalsOnlyFunction } from "./totalsOnly";
import { unevennessFunction } from "./unevenness";
import { upDownFunction } from "./upDown";
import { worthItFunction } from "./worthIt";

const FUNCTIONS: readonly Sealed[] = [
  seal(upDownFunction),
  seal(perPlantFunction),
  seal(unevennessFunction),
  seal(compareTwoFunction),
  seal(compareManyFunction),
  seal(totalsOnlyFunction),
  seal(manyTrialsFunction),
  seal(worthItFunction),
  seal(plantsNeededFunction),
  seal(smallestChangeFunction),
  seal(chanceToSeeFunction),
  seal(drawLotsFunction),
  seal(tallyPicksFunction),
  seal(halfPickedFunction),
  seal(pickCurveFunction),
  seal(lookOverFunction),
  seal(plainNumberFunction),
];

const byId: ReadonlyMap<string, Sealed> = new Map(FUNCTIONS.map((fn) => [fn.id, fn]));

/** The desk that answers every call, from a cell or from the pane. */
export const theDesk: Desk = {
  parameters: (id) => byId.get(id)?.parameters ?? null,
  ask(id, given) {
    const fn = byId.get(id);
    if (fn === undefined) throw new Error(`no such function: ${id}`);
    return fn.reply(given);
  },
};
