import type { WorthVerdict } from "../nouns/findings/worthIt";

/** What WORTHIT's label "What it says" holds (METHODS 8.16). */
export function worthSays(verdict: WorthVerdict): string {
  return texts[verdict];
}

const texts: Readonly<Record<WorthVerdict, string>> = {
  pays: "Pays",
  "does-not-pay": "Does not pay",
  "may-or-may-not": "May or may not pay",
  "pays-on-averages": "On these averages it pays",
  "does-not-pay-on-averages": "On these averages it does not pay",
};
