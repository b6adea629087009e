import { chanceToSee } from "./chanceToSee";
import { compareMany } from "./compareMany";
import { compareTwo } from "./compareTwo";
import { drawLots } from "./drawLots";
import { halfPicked } from "./halfPicked";
import { lookOver } from "./lookOver";
import { manyTrials } from "./manyTrials";
import { perPlant } from "./perPlant";
import { pickCurve } from "./pickCurve";
import { plainNumber } from "./plainNumber";
import { plantsNeeded } from "./plantsNeeded";
import { smallestChange } from "./smallestChange";
import { tallyPicks } from "./tallyPicks";
import { totalsOnly } from "./totalsOnly";
import { unevenness } from "./unevenness";
import { upDown } from "./upDown";
import { worthIt } from "./worthIt";

/** Every worksheet function by its id, which is also its name in the cell and never changes after release. */
export const doors = {
  UPDOWN: upDown,
  PERPLANT: perPlant,
  UNEVENNESS: unevenness,
  COMPARETWO: compareTwo,
  COMPAREMANY: compareMany,
  TOTALSONLY: totalsOnly,
  MANYTRIALS: manyTrials,
  WORTHIT: worthIt,
  PLANTSNEEDED: plantsNeeded,
  SMALLESTCHANGE: smallestChange,
  CHANCETOSEE: chanceToSee,
  DRAWLOTS: drawLots,
  TALLYPICKS: tallyPicks,
  HALFPICKED: halfPicked,
  PICKCURVE: pickCurve,
  LOOKOVER: lookOver,
  PLAINNUMBER: plainNumber,
};
