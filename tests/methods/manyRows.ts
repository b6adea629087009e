import { expect } from "vitest";
import { additiveModel } from "../../src/methods/additiveModel";
import type { PlantInModel, TreatmentModel } from "../../src/methods/treatmentModel";

/** The columns of a trial in beds, as the reference files hold them. */
export interface Columns {
  readonly value: readonly number[];
  readonly treatment: readonly number[];
  readonly bed: readonly number[];
}

/** The columns by rows. */
export function plantsOf({ value, treatment, bed }: Columns): readonly PlantInModel[] {
  return value.map((amount, at) => ({ value: amount, treatment: treatment[at] ?? 0, bed: bed[at] ?? 0 }));
}

/** The additive model of a trial whose beds link all treatments. */
export function plantsModel(columns: Columns): TreatmentModel {
  return additiveModel(plantsOf(columns)) ?? expect.fail("treatments and beds cannot be told apart");
}
