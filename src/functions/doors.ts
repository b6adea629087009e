import { chanceToSee } from "./chanceToSee";
import { compareMany } from "./compareMany";
import { compareTwo } from "./compareTwo";
import { lookOver } from "./lookOver";
import { perPlant } from "./perPlant";
import { plainNumber } from "./plainNumber";
import { plantsNeeded } from "./plantsNeeded";
import { smallestChange } from "./smallestChange";
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
  WORTHIT: worthIt,
  PLANTSNEEDED: plantsNeeded,
  SMALLESTCHANGE: smallestChange,
  CHANCETOSEE: chanceToSee,
  LOOKOVER: lookOver,
  PLAINNUMBER: plainNumber,
};
