import { describe } from "../methods/describe";
import type { CellRange } from "../nouns/cellRange";
import type { PerPlant } from "../nouns/findings/perPlant";
import type { Known } from "../nouns/known";
import { lazy } from "../nouns/lazy";
import type { LostPlants } from "../nouns/lostPlants";
import { isProblem, type Problem } from "../nouns/problem";
import type { Sample } from "../nouns/sample";
import { type Argument, missing } from "../ranges/option";
import { readSample } from "../ranges/readSample";
import { allRead } from "./allRead";
import type { Given } from "./given";
import { valuesOf } from "./harvest";
import { oddPlaces } from "./oddPlaces";
import { type Planted, readPlanted, repeatedLabels } from "./planted";
import { readingCautions } from "./readingCautions";
import { readLostPlants } from "./readLostPlants";
import { seasonTotal } from "./seasonTotal";
import { usablePlants } from "./usablePlants";

/** What did each plant give, with lost plants counted by the rule named? */
export function perPlant(given: Given): PerPlant | Problem {
  const { amounts } = given;
  if (amounts === null || amounts === undefined) return missing("amounts");
  const sample = readSample(amounts, "refuse");
  if (isProblem(sample)) return sample;
  const heading = sample.name !== null && startTogether(amounts, given.planted);
  const read = allRead({ planted: readPlanted(given.planted, heading), rule: readLostPlants(given) });
  if (isProblem(read)) return read;
  const { planted, rule } = read;
  const [only] = sample.entries;
  if (sample.entries.length === 1 && only?.kind === "value" && planted !== null && planted.plants > 1) {
    return seasonTotal({ sample, planted, rule }, only.value);
  }
  if (planted !== null && sample.entries.length !== planted.plants) {
    return { problem: "numbers-for-planted", numbers: sample.entries.length, planted: planted.plants };
  }
  return plantByPlant(sample, planted, rule);
}

/** Whether labels begin in the row of the amounts' heading; without addresses, where both ranges are as tall. */
function startTogether(amounts: CellRange, labels: Argument): boolean {
  if (!labels) return false;
  const [one, other] = [amounts.corner, labels.corner];
  return one === null || other === null ? amounts.cells.length === labels.cells.length : one.row === other.row;
}

function plantByPlant(sample: Sample, planted: Planted | null, rule: LostPlants): PerPlant | Problem {
  const survivors = usablePlants(sample, "leave out");
  const counted = usablePlants(sample, rule);
  const lost = sample.entries.filter(({ kind }) => kind === "lost").length;
  const notRecorded = sample.entries.length - survivors.length - lost;
  if (counted.length + lost === 0) return { problem: "no-usable-plants", where: sample.where };
  const total = valuesOf(survivors).reduce((sum, value) => sum + value, 0);
  const setOut = sample.entries.length;
  const perPlantSetOut: Known = notRecorded > 0 ? { absent: "some-not-recorded", count: notRecorded } : total / setOut;
  const odd = oddPlaces(survivors);
  return {
    finding: "per-plant",
    name: sample.name,
    unit: sample.unit,
    rule,
    fromTotal: false,
    perPlant: describe(valuesOf(counted)).mean,
    setOut,
    lost,
    notRecorded,
    counted: counted.length,
    total,
    perSurvivingPlant: describe(valuesOf(survivors)).mean,
    perPlantSetOut,
    cautions: lazy(() => [
      ...repeatedLabels(planted),
      ...(lost > 0 ? [{ caution: "C04" } as const] : []),
      ...(odd.length > 0 ? [{ caution: "C06", places: odd } as const] : []),
      ...readingCautions([sample]),
      { caution: "C12" },
    ]),
  };
}
