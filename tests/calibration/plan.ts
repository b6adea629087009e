import { isKnown, type Known } from "../../src/nouns/known";
import { ask } from "./ask";
import type { Experiment } from "./experiment";
import type { PlantKind } from "./plants/drawPlant";
import { several } from "./several";
import { sideBySide } from "./sideBySide";

/** What a grower hopes for, and the plants as they truly are. */
export interface Plan {
  readonly kind: PlantKind;
  readonly change: number;
  /** Between plants treated alike; with beds, within a bed. */
  readonly unevenness: number;
  readonly treatments: number;
  /** One of each treatment in every bed, or separate plants. */
  readonly beds: boolean;
}

/** The plan PLANTSNEEDED makes, no plant lost. */
export interface Planned {
  readonly needed: number;
  readonly chanceToSee: number;
  readonly chanceEnough: number;
}

/** Asks PLANTSNEEDED for a chance of 80 in 100. */
export function planned({ change, unevenness, treatments, beds }: Plan): Planned {
  const given = { change, unevenness, treatments, beds: beds ? "one each" : null, losses: 0 };
  const found = ask("PLANTSNEEDED", "plants-needed", given);
  return {
    needed: figure(found.needed),
    chanceToSee: figure(found.chanceToSee()),
    chanceEnough: figure(found.chanceEnough()),
  };
}

function figure(known: Known): number {
  if (!isKnown(known)) throw new Error(`the plan has no figure: ${known.absent}`);
  return known;
}

/** Carries the plan out: whether the change was "seen" at all, and found "enough" to matter. */
export function planKept(plan: Plan): Experiment {
  const { change } = plan;
  const way = change > 0 ? "up" : "down";
  const trial = plan.treatments === 2 ? twoOf(plan) : manyOf(plan);
  const enough = [`range ${way}-enough`, `first ${way}-enough`];
  return (source) => {
    const events = trial(source);
    return [
      ...(events.includes("told apart") || events.includes("first told apart") ? ["seen"] : []),
      ...(events.some((event) => enough.includes(event)) ? ["enough"] : []),
    ];
  };
}

/** How unevenly beds bear; whatever it is, comparing within beds takes it out. */
const BEDS = 0.3;

function twoOf(plan: Plan): Experiment {
  const { kind, change, unevenness, beds } = plan;
  const { needed } = planned(plan);
  return sideBySide({
    kind,
    plants: [needed, needed],
    unevenness: [unevenness, unevenness],
    change,
    ...(beds ? { beds: BEDS, options: { how: "beds" } } : {}),
  });
}

function manyOf(plan: Plan): Experiment {
  const { kind, change, unevenness, treatments, beds } = plan;
  const { needed } = planned(plan);
  const changes = [change, ...Array.from({ length: treatments - 2 }, () => 0)];
  return several({ kind, plantsEach: needed, unevenness, changes, ...(beds ? { beds: BEDS } : {}) });
}
