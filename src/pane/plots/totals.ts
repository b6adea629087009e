import type { TotalFound, TotalsOnly } from "../../nouns/findings/totalsOnly";
import { isKnown } from "../../nouns/known";
import { amountText } from "../../words/amount";
import { changeRangeText } from "../../words/changeRange";
import { counted } from "../../words/counted";
import { namesOf } from "../../words/names";
import { percentText } from "../../words/percent";
import { sentenceStart } from "../../words/sentenceStart";
import { barsPicture } from "./bars";
import type { Picture } from "./picture";

/** The two totals per plant as bars from zero; null where one of them is missing. Nothing drawn here measures luck. */
export function totalsPicture(found: TotalsOnly): Picture | null {
  const { usual, tried, unit } = found;
  if (!isKnown(usual.perPlant) || !isKnown(tried.perPlant)) return null;
  const names = namesOf(usual.name, tried.name);
  const bar = (name: string, { perPlant }: TotalFound, look: "usual" | "new") => {
    const value = isKnown(perPlant) ? perPlant : 0;
    return { name: sentenceStart(name), value, text: amountText(value, unit), look };
  };
  const bars = [bar(names.usual, usual, "usual"), bar(names.tried, tried, "new")];
  const picture = barsPicture(bars, "The totals per plant", captionOf(found));
  const plants = ` (${counted(usual.plants, "plant")} and ${tried.plants})`;
  return { ...picture, title: `${picture.title}${plants}` };
}

function captionOf({ changeRange, unevenness }: TotalsOnly): string {
  const range = changeRangeText(changeRange);
  if (range === null) return "Each bar is a total shared out among its plants.";
  return `If like plants differ by ${percentText(unevenness)}, the change may be ${range}.`;
}
