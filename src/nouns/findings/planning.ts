import type { Caution } from "../caution";
import type { Known } from "../known";
import type { Lazy } from "../lazy";
import type { Worthwhile } from "../verdict";

/** What every plan rests on. Changes, unevenness, chances and losses are fractions. */
export interface PlanBasis {
  readonly unevenness: number;
  /** False when nothing was typed and the general guess is taken. */
  readonly unevennessGiven: boolean;
  /** Treatments to compare, the usual among them. */
  readonly treatments: number;
  /** Number of beds, each holding as many of every treatment; null for separate plants. */
  readonly beds: number | "one each" | null;
}

/** PLANTSNEEDED's finding. */
export interface PlantsNeeded extends PlanBasis {
  readonly finding: "plants-needed";
  readonly change: number;
  readonly chance: number;
  readonly losses: number;
  readonly worthwhile: Worthwhile;
  /** Plants per treatment that must live to the end. */
  readonly needed: Known;
  /** Plants to set out per treatment, losses allowed for. */
  readonly setOut: Known;
  readonly inAll: Known;
  readonly chanceToSee: Lazy<Known>;
  readonly chanceEnough: Lazy<Known>;
  readonly smallestWithHalf: Lazy<Known>;
  readonly cautions: Lazy<readonly Caution[]>;
}

/** SMALLESTCHANGE's finding. */
export interface SmallestChange extends PlanBasis {
  readonly finding: "smallest-change";
  readonly plantsEach: number;
  readonly chance: number;
  readonly direction: "more" | "less";
  /** A fraction, negative for "less". */
  readonly change: Known;
  readonly cautions: Lazy<readonly Caution[]>;
}

/** CHANCETOSEE's finding. */
export interface ChanceToSee extends PlanBasis {
  readonly finding: "chance-to-see";
  readonly change: number;
  readonly plantsEach: number;
  readonly worthwhile: Worthwhile;
  readonly chanceToSee: number;
  readonly chanceEnough: number;
  readonly cautions: Lazy<readonly Caution[]>;
}
