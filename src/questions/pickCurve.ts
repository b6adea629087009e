import { halfDays } from "../methods/halfDays";
import { lastWeekShares } from "../methods/lastWeekShares";
import { runningTotals, stepDays } from "../methods/runningTotals";
import type { Caution } from "../nouns/caution";
import type { PickCurve, TreatmentCurve } from "../nouns/findings/pickCurve";
import { lazy } from "../nouns/lazy";
import { isProblem, type Problem } from "../nouns/problem";
import { labelKey } from "../ranges/labelKey";
import { missing } from "../ranges/option";
import { readWhole } from "../ranges/readWhole";
import { allRead } from "./allRead";
import { type DatedLog, datedLog } from "./datedLog";
import type { Given } from "./given";
import { givenDates } from "./givenDates";
import { logCautions, unclearDates } from "./logCautions";
import { picksOf } from "./picksOf";
import { type PlantsSetOut, readPlantsEachNamed } from "./readPlantsEachNamed";
import { stillCropping } from "./stillCropping";

const WEEK = 7;
const LONGEST_STEP = 400;

/** How did the harvest of each treatment come in? */
export function pickCurve(given: Given): PickCurve | Problem {
  const read = allRead({
    log: readLog(given),
    setOut: readPlantsEachNamed(given.plants_each),
    every: readWhole(given.days, { argument: "days", low: 1, high: LONGEST_STEP, fallback: WEEK }),
  });
  if (isProblem(read)) return read;
  const { log, setOut, every } = read;
  const steps = stepDays(log.first, log.last, every);
  const curves = curvesOf(log, setOut, steps);
  return isProblem(curves) ? curves : found(log, curves, steps);
}

function readLog({ treatments, dates, amounts }: Given): DatedLog | Problem {
  if (!treatments) return missing("treatments");
  if (!dates) return missing("dates");
  if (!amounts) return missing("amounts");
  const ranges = { owners: treatments, ownerKind: "name", amounts, dates: givenDates(dates) } as const;
  return datedLog({ ...ranges, lossNotes: null, besides: [], unit: null, start: null });
}

/** The treatments of the log in order of appearance, then those set out that were never picked. */
function curvesOf(
  log: DatedLog,
  setOut: PlantsSetOut | null,
  steps: readonly number[],
): readonly TreatmentCurve[] | Problem {
  const { names, ids } = log.owners;
  const picks = picksOf(log);
  const running = runningTotals(picks, names.length, steps);
  const shares = lastWeekShares(
    picks,
    Int32Array.from(names, (_, owner) => owner),
    names.length,
  );
  const halves = halfDays(picks, names.length);
  const picked = names.map((name, owner): TreatmentCurve => {
    const plants = setOut?.of(name) ?? null;
    return {
      name,
      setOut: plants,
      running: (running[owner] ?? []).map((sum) => sum / (plants ?? 1)),
      lastWeek: knownOrNone(shares[owner]),
      halfBy: knownOrNone((halves[owner] ?? Number.NaN) - log.first),
    };
  });
  const grown = new Set(ids);
  const curves = [...picked.filter((_, owner) => grown.has(owner)), ...neverPicked(names, setOut, steps)];
  const lacking = setOut === null ? undefined : curves.find((curve) => curve.setOut === null);
  return lacking === undefined ? curves : { problem: "plants-each-lacks", name: lacking.name };
}

function neverPicked(
  picked: readonly string[],
  setOut: PlantsSetOut | null,
  steps: readonly number[],
): readonly TreatmentCurve[] {
  if (setOut === null) return [];
  const known = new Set(picked.map((name) => labelKey(name, "name")));
  const others = setOut.names.filter((name) => !known.has(labelKey(name, "name")));
  const none = { running: steps.map(() => 0), lastWeek: null, halfBy: null };
  return others.map((name) => ({ name, setOut: setOut.of(name), ...none }));
}

function knownOrNone(value: number | undefined): number | null {
  return value === undefined || Number.isNaN(value) ? null : value;
}

function found(log: DatedLog, treatments: readonly TreatmentCurve[], steps: readonly number[]): PickCurve {
  const { days, amounts, unlabelled, totalRows } = log;
  const perPlant = treatments.every(({ setOut }) => setOut !== null);
  return {
    finding: "pick-curve",
    unit: amounts.unit,
    treatments,
    steps,
    perPlant,
    yearsKnown: days.yearsKnown,
    leftOut: unlabelled.length + totalRows.length + unclearDates(log),
    weightsMissing: amounts.missing.size,
    cautions: lazy(() => cautionsOf(log, perPlant)),
  };
}

function cautionsOf(log: DatedLog, perPlant: boolean): readonly Caution[] {
  const { names } = log.owners;
  return [
    ...stillCropping(log, { names, groupOf: Int32Array.from(names, (_, owner) => owner) }),
    ...(perPlant ? [] : [{ caution: "C37" } as const]),
    ...logCautions(log),
    { caution: "C12" },
  ];
}
