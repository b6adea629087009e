import { describe } from "../methods/describe";
import { halfDays } from "../methods/halfDays";
import { sumPicks } from "../methods/sumPicks";
import type { HalfPicked, HalfPlant } from "../nouns/findings/halfPicked";
import { lazy } from "../nouns/lazy";
import { isProblem, type Problem } from "../nouns/problem";
import { cellText } from "../ranges/cellText";
import { missing, oneCell } from "../ranges/option";
import { type DatedLog, datedLog } from "./datedLog";
import type { Given } from "./given";
import { givenDates } from "./givenDates";
import { logCautions } from "./logCautions";
import { picksOf } from "./picksOf";

/** By which day was half of each plant's own harvest in? */
export function halfPicked(given: Given): HalfPicked | Problem {
  const { plants, dates, amounts } = given;
  if (!plants) return missing("plants");
  if (!dates) return missing("dates");
  if (!amounts) return missing("amounts");
  const start = oneCell(given.start, "start");
  if (isProblem(start)) return start;
  const ranges = { owners: plants, ownerKind: "plant", amounts, dates: givenDates(dates) } as const;
  const log = datedLog({ ...ranges, lossNotes: null, besides: [], unit: null, start: start.cell });
  if (isProblem(log)) return log;
  if (start.cell !== null && Number.isNaN(log.days.start)) {
    return { problem: "not-a-date", argument: "start", given: cellText(start.cell) };
  }
  return found(log);
}

function found(log: DatedLog): HalfPicked {
  const startGiven = !Number.isNaN(log.days.start);
  const start = startGiven ? log.days.start : log.first;
  const plants = halfPlants(log, start);
  const days = plants.flatMap(({ day }) => (typeof day === "number" ? [day] : []));
  return {
    finding: "half-picked",
    plants,
    start,
    startGiven,
    yearsKnown: log.days.yearsKnown,
    mean: describe(days).mean,
    cautions: lazy(() => [...logCautions(log), { caution: "C12" }]),
  };
}

function halfPlants(log: DatedLog, start: number): readonly HalfPlant[] {
  const { owners } = log;
  const halves = halfDays(picksOf(log), owners.names.length);
  const { weighed } = sumPicks(picksOf(log), owners.names.length);
  const lost = new Set([...log.lost.keys()].map((row) => owners.ids[row]));
  const firstRows = firstRowsOf(owners.ids);
  return owners.names.flatMap((plant, owner) => {
    const row = firstRows.get(owner);
    if (row === undefined) return [];
    const half = halves[owner] ?? Number.NaN;
    const none = weighed[owner] === 0 ? "not recorded" : "no harvest";
    const day = lost.has(owner) ? "lost" : Number.isNaN(half) ? none : half - start;
    return [{ plant, day, place: log.cellAt("owners", row).place }];
  });
}

/** The first row of each plant, by its number. */
function firstRowsOf(owners: Int32Array): ReadonlyMap<number, number> {
  const rows = new Map<number, number>();
  for (const [row, owner] of owners.entries()) if (!rows.has(owner)) rows.set(owner, row);
  return rows;
}
