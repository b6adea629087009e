import type { Desk } from "../../answers/desk";
import type { PlanPoint } from "../plots/plan";
import { askValues } from "./deskCall";
import { type PlanQuestion, plantsEach, sharedValues } from "./planQuestion";

/** The chances of one plan, as fractions. */
export interface Chances {
  readonly chanceToSee: number;
  readonly chanceEnough: number;
}

/** What a plan can show. */
export interface PlanFigures extends Chances {
  readonly plantsEach: number;
  /** The smallest change that shows; null when none does. */
  readonly smallest: number | null;
  /** Plants to set out of each for the change hoped for; null when that is not practical. */
  readonly needed: number | null;
  readonly curve: readonly PlanPoint[];
}

/** Too small a room gives null, an argument that the desk refuses its sentence. */
export type PlanReply = PlanFigures | string | null;

/** Below this the plan is called hopeless: it would more likely miss the change than see it. */
export const fairChance = 0.5;

/** More points than this make the curve no clearer. */
const mostPoints = 14;

/** Asks the desk what the plan can show. */
export function planFigures(desk: Desk, question: PlanQuestion): PlanReply {
  const each = plantsEach(question);
  if (each < 2) return null;
  const chances = chancesOf(desk, question, each);
  if (typeof chances === "string") return chances;
  const smallest = smallestChange(desk, question, each);
  const needed = plantsNeeded(desk, question);
  return { plantsEach: each, ...chances, smallest, needed, curve: planCurve(desk, question, each) };
}

/** The chances with so many plants of each; the desk's sentence when it refuses. */
export function chancesOf(desk: Desk, question: PlanQuestion, each: number): Chances | string {
  const { hoped, worthwhile } = question;
  const values = { ...sharedValues(question), change: hoped, plants_each: each, worthwhile };
  const reply = askValues(desk, "CHANCETOSEE", values);
  if ("problem" in reply) return reply.message;
  const { finding } = reply;
  return finding.finding === "chance-to-see" ? finding : "";
}

function smallestChange(desk: Desk, question: PlanQuestion, each: number): number | null {
  const direction = question.hoped < 0 ? "less" : null;
  const reply = askValues(desk, "SMALLESTCHANGE", { ...sharedValues(question), plants_each: each, direction });
  return "problem" in reply ? null : numberOf(reply.cell()[0]?.[0]);
}

function plantsNeeded(desk: Desk, question: PlanQuestion): number | null {
  const reply = askValues(desk, "PLANTSNEEDED", { ...sharedValues(question), change: question.hoped });
  return "problem" in reply ? null : numberOf(reply.cell()[0]?.[0]);
}

/** The smallest change that plans of several sizes show, the plan with `each` among them. */
export function planCurve(desk: Desk, question: PlanQuestion, each: number): readonly PlanPoint[] {
  const bunch = typeof question.beds === "number" ? question.beds : 1;
  const last = Math.max(2 * each, 12);
  const step = bunch * Math.ceil(last / mostPoints / bunch);
  const sizes = Array.from({ length: Math.floor(last / step) }, (_, at) => (at + 1) * step).filter((size) => size >= 2);
  const all = [...new Set([...sizes, each])].sort((one, other) => one - other);
  return all.map((size) => ({ plantsEach: size, change: smallestChange(desk, question, size) }));
}

function numberOf(output: unknown): number | null {
  return typeof output === "number" ? output : null;
}
