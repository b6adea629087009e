import { allTogether } from "../../src/methods/allTogether";
import { oneWayModel } from "../../src/methods/oneWayModel";
import strd from "../reference/strd.json";
import { figure, heading } from "./report";

type Groups = readonly (readonly number[])[];

/** NIST's one-way sets: correct digits (LRE, 15 at most) of F and R². */
export function certifiedDigits(): void {
  heading("NIST StRD, one-way analysis of variance: correct digits");
  for (const { name, groups, f, rSquared } of strd.observed) digitsOf(name, groups, { f, rSquared });
  for (const { name, offset, replicates, f, rSquared } of strd.generated) {
    digitsOf(name, generated(offset, replicates), { f, rSquared });
  }
}

function digitsOf(name: string, groups: Groups, known: { readonly f: number; readonly rSquared: number }): void {
  const model = oneWayModel(groups);
  const { treatments, residual } = model.squares;
  figure(`${name}, F`, digits(allTogether(model).f, known.f), "digits");
  const rSquared = treatments.sumOfSquares / (treatments.sumOfSquares + residual.sumOfSquares);
  figure(`${name}, R²`, digits(rSquared, known.rSquared), "digits");
}

function digits(found: number, known: number): number {
  return Math.max(0, Math.min(15, -Math.log10(Math.abs(found / known - 1))));
}

/** The rule of Simon & Lesage's sets: see strd.json. */
function generated(offset: number, replicates: number): Groups {
  const effect = (at: number) => (at === 0 ? 2 : at % 2 === 1 ? 1 : 3);
  return Array.from({ length: 9 }, (_, treatment) =>
    Array.from({ length: replicates }, (_unused, at) => (offset * 10 + effect(treatment) + effect(at)) / 10),
  );
}
