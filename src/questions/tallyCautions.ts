import type { Caution, Loss } from "../nouns/caution";
import type { PickTally, TalliedPlant } from "../nouns/findings/pickTally";
import { labelKey } from "../ranges/labelKey";
import type { AllPlants } from "../ranges/readAllPlants";
import type { PickLog } from "../ranges/readPicks";
import { logCautions } from "./logCautions";
import type { PickedPlants } from "./pickedPlants";
import { type PickGroups, stillCropping } from "./stillCropping";

type Found = Pick<PickTally, "plants" | "withTreatments">;

/** A share of lost plants, or a gap between two, from which a loss weighs heavily. */
const STRONG_LOSS = 0.2;

/** What to look out for in a tally (METHODS 8.13). */
export function tallyCautions(found: Found, { log }: PickedPlants, list: AllPlants | null): readonly Caution[] {
  return [
    ...(list?.repeated === true ? [{ caution: "C02", listedTwice: true } as const] : []),
    ...lossCaution(found),
    ...(log.days === null ? [] : stillCropping(log, treatmentGroups(found, log))),
    ...logCautions(log),
    { caution: "C12" },
  ];
}

function lossCaution({ plants, withTreatments }: Found): readonly Caution[] {
  const treatments = withTreatments ? plants.map(({ treatment }) => treatment) : [null];
  const losses = [...new Set(treatments)].map((name) =>
    lossOf(name, withTreatments ? ofTreatment(plants, name) : plants),
  );
  if (losses.every(({ lost }) => lost === 0)) return [];
  const shares = losses.map(({ lost, setOut }) => lost / setOut);
  const [most, least] = [Math.max(...shares), Math.min(...shares)];
  const none = { absent: "no-usable-plants" } as const;
  return [
    {
      caution: "C03",
      losses: losses.filter(({ lost }) => lost > 0),
      change: none,
      changeLostAsZero: none,
      strong: most >= STRONG_LOSS || most - least >= STRONG_LOSS,
      countedAsZero: false,
    },
  ];
}

function ofTreatment(plants: readonly TalliedPlant[], name: string | null): readonly TalliedPlant[] {
  return plants.filter(({ treatment }) => treatment === name);
}

function lossOf(name: string | null, plants: readonly TalliedPlant[]): Loss {
  const lost = plants.filter(({ status }) => status === "lost" || status === "lost-picked-later").length;
  return { name: name ?? "plants", role: "usual", lost, setOut: plants.length };
}

/** The plants' treatments as decided; all together where none are known. */
function treatmentGroups({ plants, withTreatments }: Found, { owners }: PickLog): PickGroups {
  if (!withTreatments) return { names: [null], groupOf: new Int32Array(owners.names.length) };
  const names = [...new Set(plants.map(({ treatment }) => treatment))];
  const byKey = new Map(plants.map(({ plant, treatment }) => [labelKey(plant, "plant"), names.indexOf(treatment)]));
  return { names, groupOf: Int32Array.from(owners.names, (name) => byKey.get(labelKey(name, "plant")) ?? -1) };
}
