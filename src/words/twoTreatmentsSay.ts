import type { TwoTreatments } from "../nouns/findings/twoTreatments";
import { isKnown } from "../nouns/known";
import { amountText } from "./amount";
import { sizeRangeText } from "./changeRange";
import { counted } from "./counted";
import { directionWords } from "./direction";
import { groupSize } from "./groupSize";
import { moreOrLess } from "./moreOrLess";
import { namesOf } from "./names";
import { percentSize, percentText } from "./percent";
import { sentenceStart } from "./sentenceStart";
import { sentences } from "./sentences";
import { settledChange } from "./settledChange";
import { timesText } from "./times";
import { whyNoAnswer } from "./whyNoAnswer";
import { withNames } from "./withNames";

/** "You can say": one line to repeat in public, for every verdict (METHODS 6.4). */
export function twoTreatmentsSay(found: TwoTreatments): string {
  const { usual, tried } = namesOf(found.usual.name, found.tried.name);
  const New = sentenceStart(tried);
  const { ahead, behind } = directionWords(found.worthwhile.lessWanted);
  switch (found.verdict) {
    case "up-enough":
    case "down-enough":
      return enough(found);
    case "up-unclear":
      return `${New} gave more than ${usual} in our trial. How much more is still open.`;
    case "down-unclear":
      return `${New} gave less than ${usual} in our trial. How much less is still open.`;
    case "up-small":
      return `${New} gave a little more than ${usual} here. It was less than we would act on.`;
    case "down-small":
      return `${New} gave a little less than ${usual} here. It was not enough for us to act on.`;
    case "level":
      return close(found);
    case "open-up":
    case "open-down":
      return notSettled(found);
    case "open":
      return `With ${groupSize(found)}, we could not tell ${tried} from ${usual}.`;
    case "leaning-up":
      return `${New} is ${ahead} so far. With ${groupSize(found)}, it is only a hint.`;
    case "leaning-down":
      return `${New} is ${behind} so far. With ${groupSize(found)}, it is only a hint.`;
    case "few":
      return few(found);
    case "none":
      return `We have no answer this season. ${whyNoAnswer(found)}`;
  }
}

function enough(found: TwoTreatments): string {
  const [times = "", ...extra] = settledChange(found).split(/(?= \()/);
  const size = `${plantsOfBoth(found)}${inPairs(found)}`;
  const first = withNames(
    found.usual.name,
    found.tried.name,
    ({ usual, tried }) => `Here, ${tried} gave ${times} per plant${extra.join("")} than ${usual} (${size}).`,
  );
  return sentences(first, trueSize(found));
}

function plantsOfBoth({ usual, tried }: TwoTreatments): string {
  const plants = counted(tried.plants.length, "plant");
  return usual.plants.length === tried.plants.length ? `${plants} each` : `${plants} and ${usual.plants.length}`;
}

function inPairs(found: TwoTreatments): string {
  return found.pairs === null ? "" : `, in ${groupSize(found)}`;
}

/** The range behind a verdict "enough to matter", as a gain or a loss. */
function trueSize({ changeRange, verdict, worthwhile }: TwoTreatments): string {
  const { rise, fall } = directionWords(worthwhile.lessWanted);
  const size = sizeRangeText(changeRange);
  return size === null ? "" : `The true ${verdict === "up-enough" ? rise : fall} may be ${size}.`;
}

function close({ usual, tried, worthwhile }: TwoTreatments): string {
  const names = namesOf(usual.name, tried.name);
  const gap = percentText(worthwhile.size);
  const both = `${sentenceStart(names.tried)} and ${names.usual} came out close here.`;
  return `${both} The trial points to a gap of less than ${gap}, either way.`;
}

function notSettled({ usual, tried, change, verdict, worthwhile }: TwoTreatments): string {
  const { ahead, behind } = directionWords(worthwhile.lessWanted);
  const size = isKnown(change) ? percentSize(change) : "a little";
  const where = isKnown(change) && change < 0 ? behind : ahead;
  const hopeful = (verdict === "open-up") !== worthwhile.lessWanted;
  const first = `${sentenceStart(namesOf(usual.name, tried.name).tried)} came out ${size} ${where} in our trial`;
  return `${first}, but luck is not ruled out.${hopeful ? " We will try it again." : ""}`;
}

function few(found: TwoTreatments): string {
  const { usual, tried, unit, change } = found;
  if (!isKnown(usual.mean) || !isKnown(tried.mean)) return `${groupSize(found)} cannot settle it.`;
  const fromTried = `${amountText(tried.mean * tried.plants.length, unit)} from ${counted(tried.plants.length, "plant")}`;
  const fromUsual = `${amountText(usual.mean * usual.plants.length, unit)} from ${usual.plants.length}`;
  const got = withNames(
    usual.name,
    tried.name,
    (names) => `We got ${fromTried} of ${names.tried} and ${fromUsual} of ${names.usual}.`,
  );
  const perPlant = isKnown(change) ? `Per plant that is ${timesOrLess(change)}, but` : "But";
  return `${got} ${perPlant} ${groupSize(found)} cannot settle it.`;
}

function timesOrLess(change: number): string {
  return change > 0 ? `${timesText(change)} times as much` : (moreOrLess(change) ?? "level");
}
