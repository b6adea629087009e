import type { Desk } from "../../answers/desk";
import type { Entry } from "../../host/sheet";
import { signedPercent } from "../../words/percent";
import { addressOf, beyond, firstSpot } from "../address";
import type { Target } from "../placing";
import { formulaOf } from "./deskCall";
import { type PlanGiven, percentSource } from "./planForm";
import { plantsEach } from "./planQuestion";

/** The plan as formulas for the sheet: labels from the chosen cell down, the formulas beside them. */
export function planEntries(desk: Desk, { question, unevennessOn }: PlanGiven, target: Target): readonly Entry[] {
  const { ways, beds, hoped, worthwhile } = question;
  const each = String(plantsEach(question));
  const shared = {
    unevenness: unevennessOn(target.sheet),
    treatments: ways === 2 ? "" : String(ways),
    beds: beds === "none" ? "" : beds === "one each" ? '"one each"' : String(beds),
  };
  const change = percentSource(hoped);
  const enough = worthwhile === 0.1 ? "" : percentSource(worthwhile);
  const direction = hoped < 0 ? '"less"' : "";
  const shown = signedPercent(hoped).replace(/^\+/, "a gain of ").replace(/^−/, "a loss of ");
  const rows = [
    [
      `Plants needed of each, ${shown}`,
      formulaOf(desk, "PLANTSNEEDED", { ...shared, change, worthwhile: enough }),
      "0",
    ],
    [
      `Smallest change that shows, ${each} each`,
      formulaOf(desk, "SMALLESTCHANGE", { ...shared, plants_each: each, direction }),
      "0.0%",
    ],
    [
      `Chance to see ${shown}`,
      formulaOf(desk, "CHANCETOSEE", { ...shared, change, plants_each: each, worthwhile: enough }),
      "0.0%",
    ],
  ] as const;
  const corner = firstSpot(target.address);
  const at = (down: number, across: number) => addressOf(beyond(corner, down, across));
  return rows.flatMap(([label, formula, format], down): readonly Entry[] => [
    { sheet: target.sheet, address: at(down, 0), content: label, format: "General" },
    { sheet: target.sheet, address: at(down, 1), content: formula, format },
  ]);
}
