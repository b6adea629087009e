import type { TimesBound } from "../nouns/findings/totalsOnly";
import { plainNumber } from "./plainNumber";

/** "at least 2.3 times as many", rounded to two figures towards saying less. */
export function timesBoundText({ end, times }: TimesBound): string {
  const unit = 10 ** (Math.floor(Math.log10(times)) - 1);
  const steps = times / unit;
  const rounded = (end === "at least" ? Math.floor(steps + SLACK) : Math.ceil(steps - SLACK)) * unit;
  return `${end} ${plainNumber(Number(rounded.toPrecision(2)), 6)} times as many`;
}

/** Keeps a figure that is whole but for rounding. */
const SLACK = 1e-9;
