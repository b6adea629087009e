import type { TwoTreatments } from "../nouns/findings/twoTreatments";
import { isKnown } from "../nouns/known";
import { mirrored } from "./direction";
import { planSentence } from "./planSentence";

/**
 * What to do next (METHODS 2.1): first where the new way is cheap and harmless, then where it costs money or labour.
 * Where less is wanted the table is read mirrored.
 */
export function twoTreatmentsNext(found: TwoTreatments): readonly string[] {
  const wanted = found.worthwhile.lessWanted ? mirrored(found.verdict) : found.verdict;
  switch (wanted) {
    case "up-enough":
      return [
        `${cheap}, use it on part and compare side by side once more.`,
        `${costly}, try it again. Switch if WORTHIT's low end is above 0, or a second season agrees.`,
      ];
    case "up-unclear":
      return [`${cheap}, try it again with more plants.`, `${costly}, try it again before paying.`, ...plan(found)];
    case "up-small":
      return [`${cheap}, it is your choice.`, `${costly}, it is not worth paying for.`];
    case "leaning-up":
      return ["Try it again with more plants.", ...plan(found)];
    case "open-up":
      return [
        `${cheap}, it is your choice. It may be worth trying again with more plants.`,
        `${costly}, do not pay yet. Try it again only if the plan's chance is at least 50 %.`,
        ...plan(found),
      ];
    case "open":
      return ["Make no change on this evidence."];
    case "level":
      return [`${cheap}, choose the cheaper or easier one.`, `${costly}, drop it.`];
    case "open-down":
    case "down-enough":
    case "down-small":
    case "down-unclear":
      return [`${cheap}, drop or change the idea.`, `${costly}, drop it.`];
    case "leaning-down":
      return ["Drop or change the idea. If you still believe in it, try it again with more plants."];
    case "few":
      return ["It was a demonstration. Say what you saw, and plan a trial.", ...plan(found)];
    case "none":
      return isKnown(found.differenceRange.low)
        ? ["Give both averages, and judge the difference in amounts."]
        : ["It was a demonstration. Say what you saw, and plan a trial."];
  }
}

const cheap = "If the new way is cheap and harmless";
const costly = "If it costs money or labour";

function plan({ usual, tried, change, worthwhile, pairs }: TwoTreatments): readonly string[] {
  const uneven = [usual.unevenness, tried.unevenness].filter(isKnown);
  const unevenness = uneven.length === 0 ? null : Math.max(...uneven);
  const beds = pairs === null ? null : "one each";
  return [planSentence({ change: isKnown(change) ? change : null, worthwhile, unevenness, beds })];
}
