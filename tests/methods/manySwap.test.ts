import { describe, expect, it } from "vitest";
import { additiveModel } from "../../src/methods/additiveModel";
import { contrast, type Duo } from "../../src/methods/contrast";
import { manySwap } from "../../src/methods/manySwap";
import { oneWayModel } from "../../src/methods/oneWayModel";
import type { PlantInModel, TreatmentModel } from "../../src/methods/treatmentModel";
import { near } from "../near";
import reference from "../reference/manySwap.json";
import { groupsOf } from "./manyCases";

type Case = (typeof reference.cases)[number];

function plantsOf({ value, treatment, bed }: Case): readonly PlantInModel[] {
  return value.map((amount, at) => ({ value: amount, treatment: treatment[at] ?? 0, bed: bed[at] ?? 0 }));
}

function modelOf(one: Case): TreatmentModel {
  const inBeds = one.bed.some((bed) => bed > 0);
  return (inBeds ? additiveModel(plantsOf(one)) : oneWayModel(groupsOf(one))) ?? expect.fail("no model");
}

function duosOf({ duos }: Case): readonly Duo[] {
  return duos.map(([usual = 0, tried = 0]) => ({ usual, tried }));
}

/** Four standard errors of a share among 20 000. */
const wide = (share: number) => 4 * Math.sqrt((share * (1 - share)) / 20_000);

describe("manySwap comes within four standard errors of R's share of all relabelings", () => {
  it.each(reference.cases)("$name: $relabelings relabelings", (one) => {
    const model = modelOf(one);
    const swapped = manySwap(plantsOf(one), model, duosOf(one));
    for (const [at, duo] of duosOf(one).entries()) {
      const { t } = contrast(model, duo);
      const [seen = 0, share = 0] = [one.t[at], one.share[at]];
      near("t", Math.abs(t), seen, { relative: 1e-12 });
      near("share", swapped(t), share, { absolute: wide(share) });
    }
  });
});

it("draws the same relabelings each time, and never says 0", () => {
  const one = reference.cases[0] ?? expect.fail("no case");
  const swapped = () => manySwap(plantsOf(one), modelOf(one), duosOf(one));
  expect(swapped()(1.5)).toBe(swapped()(-1.5));
  expect(swapped()(1e9)).toBe(1 / 20_001);
  expect(swapped()(0)).toBe(1);
});

it("another unit and values far from zero change nothing", () => {
  const one = reference.cases[2] ?? expect.fail("no case");
  const moved = { ...one, value: one.value.map((value) => 1e6 + 8 * value) };
  const share = (some: Case) => manySwap(plantsOf(some), modelOf(some), duosOf(some))(2);
  expect(share(moved)).toBe(share(one));
});

it("beds that the model leaves out are no fences", () => {
  const open = reference.cases.find(({ bed }) => bed.every((place) => place === 0)) ?? expect.fail("no case");
  const plants = plantsOf(open).map((plant, at) => ({ ...plant, bed: at % 2 }));
  const share = (some: readonly PlantInModel[]) => manySwap(some, modelOf(open), duosOf(open))(2);
  expect(share(plants)).toBe(share(plantsOf(open)));
});

it("two treatments whose averages are alike: no relabeling is nearer, so that the share is 1", () => {
  // 1 and 2 against 1 and 2: of the six relabelings four have no gap either
  const plants = [1, 2, 1, 2].map((value, at) => ({ value, treatment: at < 2 ? 0 : 1, bed: 0 }));
  const model =
    oneWayModel([
      [1, 2],
      [1, 2],
    ]) ?? expect.fail("no model");
  expect(manySwap(plants, model, [{ usual: 0, tried: 1 }])(0)).toBe(1);
});
