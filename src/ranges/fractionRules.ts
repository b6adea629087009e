import type { Problem } from "../nouns/problem";

/** The arguments that are percents, given as fractions. */
export type FractionName = "worthwhile" | "change" | "unevenness" | "chance" | "losses" | "confidence";

/** A fraction as typed; `signed` when a percent sign was typed with it, so that it cannot be meant as points. */
export interface TypedFraction {
  readonly argument: string;
  readonly value: number;
  readonly signed: boolean;
}

/** Which fractions each argument refuses (METHODS 4.4); null where the value may stand. */
export const FRACTION_RULES: Readonly<Record<FractionName, (typed: TypedFraction) => Problem | null>> = {
  /** Not 0, within (−100 %, 100 %). */
  worthwhile(typed) {
    if (typed.value === 0) return { problem: "zero-worthwhile" };
    return Math.abs(typed.value) >= 1 ? asPoints(typed, -1, 1) : null;
  },
  /** Within (−100 %, 500 %); 3 and 4 as bare numbers are taken for points. */
  change(typed) {
    const { value, signed } = typed;
    if (value === -1 || (value < -1 && signed)) return { problem: "fall-too-big", given: value };
    const pointsLike = value >= 3 && Number.isInteger(value) && !signed;
    return value < -1 || value >= 5 || pointsLike ? asPoints(typed, -1, 5) : null;
  },
  /** Within (0 %, 300 %). */
  unevenness(typed) {
    if (typed.value <= 0) return { problem: "zero-unevenness", given: typed.value };
    return typed.value >= 3 ? asPoints(typed, 0, 3) : null;
  },
  /** Within (5 %, 100 %). */
  chance(typed) {
    if (typed.value <= 0.05 || typed.value === 1) return outside(typed, 0.05, 1);
    return typed.value > 1 ? asPoints(typed, 0.05, 1) : null;
  },
  /** From 0 % to below 100 %. */
  losses(typed) {
    if (typed.value < 0) return outside(typed, 0, 1);
    return typed.value >= 1 ? asPoints(typed, 0, 1) : null;
  },
  /** From 50 % to below 100 %. */
  confidence(typed) {
    if (typed.value < 0.5 || typed.value === 1) return outside(typed, 0.5, 1);
    return typed.value > 1 ? asPoints(typed, 0.5, 1) : null;
  },
};

/** Too big: typed as points, unless the percent sign says that it is not. */
function asPoints(typed: TypedFraction, low: number, high: number): Problem {
  const { argument, value, signed } = typed;
  return signed ? outside(typed, low, high) : { problem: "percent-as-points", argument, given: value };
}

function outside({ argument, value }: TypedFraction, low: number, high: number): Problem {
  return { problem: "percent-outside", argument, given: value, low, high };
}
