import type { Values } from "./deskCall";

/** How plants are grouped in beds: not at all, one of each in every bed, or in that many beds. */
export type Beds = "none" | "one each" | number;

/** A trial as the grower plans it. Changes and unevenness are fractions. */
export interface PlanQuestion {
  /** Plants there is room for, all treatments together. */
  readonly room: number;
  /** Treatments to compare, the usual among them. */
  readonly ways: number;
  readonly beds: Beds;
  readonly unevenness: number;
  /** The change hoped for. */
  readonly hoped: number;
  /** The smallest change worth acting on. */
  readonly worthwhile: number;
  /** The chance with which a change is to show. */
  readonly chance: number;
}

/** The chance that plans are made with unless the grower types another (METHODS 8.7). */
export const USUAL_CHANCE = 0.8;

/** Plants of each treatment that the room allows: with beds as many in each bed. */
export function plantsEach({ room, ways, beds }: Pick<PlanQuestion, "room" | "ways" | "beds">): number {
  const bunch = typeof beds === "number" ? beds : 1;
  return Math.floor(room / (ways * bunch)) * bunch;
}

/** The arguments that planning functions share; one that a function does not have is passed over. */
export function sharedValues({ ways, beds, unevenness, chance }: PlanQuestion): Values {
  return { unevenness, treatments: ways, beds: beds === "none" ? null : beds, chance };
}
