import { additiveModel } from "../../src/methods/additiveModel";
import { oneWayModel } from "../../src/methods/oneWayModel";
import type { TreatmentModel } from "../../src/methods/treatmentModel";
import reference from "../reference/manyTreatments.json";

export type ManyCase = (typeof reference.cases)[number];
export const manyCases: readonly ManyCase[] = reference.cases;

/** The model of a reference case, with or without its beds. */
export function modelOf({ value, treatment, bed, beds }: ManyCase): TreatmentModel {
  const plants = value.map((amount, at) => ({ value: amount, treatment: treatment[at] ?? 0, bed: bed[at] ?? 0 }));
  const model = beds ? additiveModel(plants) : oneWayModel(groupsOf({ value, treatment }));
  if (model === null) throw new Error("treatments and beds cannot be told apart");
  return model;
}

/** The values of each treatment. */
export function groupsOf({ value, treatment }: Pick<ManyCase, "value" | "treatment">): readonly (readonly number[])[] {
  const groups = Math.max(...treatment) + 1;
  return Array.from({ length: groups }, (_, group) => value.filter((_amount, at) => treatment[at] === group));
}
