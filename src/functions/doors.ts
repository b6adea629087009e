import { chanceToSee } from "./chanceToSee";
import { compareMany } from "./compareMany";
import { compareTwo } from "./compareTwo";
import { halfPicked } from "./halfPicked";
import { perPlant } from "./perPlant";
import { pickCurve } from "./pickCurve";
import { plantsNeeded } from "./plantsNeeded";
import { smallestChange } from "./smallestChange";
import { tallyPicks } from "./tallyPicks";
import { unevenness } from "./unevenness";
import { upDown } from "./upDown";

/** Every worksheet function by its id, which is also its name in the cell and never changes after release. */
export const doors = {
  UPDOWN: upDown,
  PERPLANT: perPlant,
  UNEVENNESS: unevenness,
  COMPARETWO: compareTwo,
  COMPAREMANY: compareMany,
  PLANTSNEEDED: plantsNeeded,
  SMALLESTCHANGE: smallestChange,
  CHANCETOSEE: chanceToSee,
  TALLYPICKS: tallyPicks,
  HALFPICKED: halfPicked,
  PICKCURVE: pickCurve,
};
