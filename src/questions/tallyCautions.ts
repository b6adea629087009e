import type { Caution, Loss } from "../nouns/caution";
import type { PickTally, TalliedPlant } from "../nouns/findings/pickTally";
import { labelKey } from "../ranges/labelKey";
import type { AllPlants } from "../ranges/readAllPlants";
import type { PickLog } from "../ranges/readPicks";
import { logCautions } from "./logCautions";
import { isStrongLoss } from "./lossCautions";
import type { PickedPlants } from "./pickedPlants";
import { type PickGroups, stillCropping } from "./stillCropping";

/** What to look out for in a tally (METHODS 8.13). */
export function tallyCautions(
  { plants }: Pick<PickTally, "plants">,
  { log }: PickedPlants,
  list: AllPlants | null,
): readonly Caution[] {
  return [
    ...(list?.repeated === true ? [{ caution: "C02", listedTwice: true } as const] : []),
    ...lossCaution(plants),
    ...stillCropping(log, treatmentGroups(plants, log)),
    ...logCautions(log),
    { caution: "C12" },
  ];
}

function lossCaution(plants: readonly TalliedPlant[]): readonly Caution[] {
  const losses = treatmentsOf(plants)
    .map((name) => lossOf(name, plants))
    .filter(({ lost }) => lost > 0);
  if (losses.length === 0) return [];
  const none = { absent: "no-usable-plants" } as const;
  return [
    {
      caution: "C03",
      losses,
      change: none,
      changeLostAsZero: none,
      strong: isStrongLoss(losses),
      countedAsZero: false,
    },
  ];
}

/** The treatments as decided plant by plant; null is one of them, the only one where none are known. */
function treatmentsOf(plants: readonly TalliedPlant[]): readonly (string | null)[] {
  return [...new Set(plants.map(({ treatment }) => treatment))];
}

function lossOf(name: string | null, plants: readonly TalliedPlant[]): Loss {
  const setOut = plants.filter(({ treatment }) => treatment === name);
  const lost = setOut.filter(({ status }) => status === "lost" || status === "lost-picked-later");
  return { name: name ?? "plants", role: "usual", lost: lost.length, setOut: setOut.length };
}

/** The treatments with the log's plants in each. */
function treatmentGroups(plants: readonly TalliedPlant[], { owners }: PickLog): PickGroups {
  const names = treatmentsOf(plants);
  const byKey = new Map(plants.map(({ plant, treatment }) => [labelKey(plant, "plant"), names.indexOf(treatment)]));
  return { names, groupOf: Int32Array.from(owners.names, (name) => byKey.get(labelKey(name, "plant")) ?? -1) };
}
