import { serialOf } from "../../src/nouns/day";
import { csvRows } from "../functions/demoLog";
import picksInR from "../reference/picks.json";
import { pickRows } from "./pickRows";

const { cases: reference } = picksInR;

/** The clean log of our demo garden as plain numbers: owners are its plants in order of appearance. */
export function demoPicks() {
  const rows = csvRows("demoLogClean").slice(1);
  const plants = [...new Set(rows.map(([, , plant = ""]) => plant))];
  const picks = pickRows(
    rows.map(([date = "", , plant = "", , , grams]) => {
      const [year = 0, month = 0, day = 0] = date.split("-").map(Number);
      return [plants.indexOf(plant), Number(grams), serialOf({ year, month, day })];
    }),
  );
  const mulches = plants.map((plant) => rows.find((row) => row[2] === plant)?.[3] ?? "");
  return { picks, plants, mulchOf: Int32Array.from(mulches, (mulch) => reference.mulches.indexOf(mulch)) };
}
