import type { HowTwo, TwoTreatments } from "../nouns/findings/twoTreatments";
import { isProblem, type Problem } from "../nouns/problem";
import { readChoice } from "../ranges/readChoice";
import { readFraction } from "../ranges/readFraction";
import { allRead } from "./allRead";
import type { Given } from "./given";
import { readLostPlants } from "./readLostPlants";
import { readTwoGroups } from "./readTwoGroups";
import { readWorthwhile } from "./readWorthwhile";
import { twoTreatments } from "./twoTreatments";

const CONFIDENCE = 0.95;
const WAYS = ["separate", "pairs", "beds", "equal unevenness", "ranks", "pairs ranks"] as const;

/** Did the new way give more or less than the usual, and could it be luck? */
export function compareTwo(given: Given): TwoTreatments | Problem {
  const options = allRead({
    asked: readChoice(given.how, { argument: "how", allowed: WAYS, fallback: "separate" as const }),
    worthwhile: readWorthwhile(given),
    confidence: readFraction(given.confidence, "confidence", CONFIDENCE),
    lostPlants: readLostPlants(given),
  });
  if (isProblem(options)) return options;
  const how: HowTwo = options.asked === "beds" ? "pairs" : options.asked;
  const groups = readTwoGroups(given, { how, lostPlants: options.lostPlants });
  return isProblem(groups) ? groups : twoTreatments(groups, { ...options, how });
}
