import type { Block, Case } from "../experiment";
import { type Plan, planKept, planned } from "../plan";
import { changeText, percent, TOLD } from "./text";

/** Plans made by PLANTSNEEDED and then carried out: are the chances it named the chances that come out? */
export const plans: Block = {
  title: "What plans promise and what they keep",
  headings: ["Hoped for", "Unevenness", "Treatments", "Layout", "Plants of each", "Promised: seen", "Promised: enough"],
  shares: [
    { heading: "Seen", events: ["seen"] },
    { heading: "Enough to matter", events: ["enough"] },
  ],
  cases: [
    ...[-0.3, 0.3, 0.5, 1].flatMap((change) =>
      [0.2, 0.35, 0.5].map((unevenness) => planCase({ kind: "gamma", change, unevenness, treatments: 2, beds: false })),
    ),
    planCase({ kind: "counts", change: 0.5, unevenness: 0.35, treatments: 2, beds: false }),
    planCase({ kind: "lognormal", change: 0.5, unevenness: 0.35, treatments: 2, beds: false }),
    planCase({ kind: "gamma", change: 0.5, unevenness: 0.35, treatments: 2, beds: true }),
    planCase({ kind: "gamma", change: 0.5, unevenness: 0.35, treatments: 4, beds: false }),
    planCase({ kind: "gamma", change: 0.5, unevenness: 0.35, treatments: 4, beds: true }),
  ],
  meaning: ({ least, most }) =>
    `Plans made for a chance of 80 in 100 show the change in about that many trials or more (up to ${most("Seen")}), if plants are as uneven as was typed. Plans of 3 plants of each keep less than they promise (${least("Seen", "3")}), and lean at most.`,
};

function planCase(plan: Plan): Case {
  const { needed, chanceToSee, chanceEnough } = planned(plan);
  const { change, unevenness, treatments, beds, kind } = plan;
  const layout = beds ? "beds, one each" : `separate, ${kind}`;
  return {
    about: [
      changeText(change),
      percent(unevenness),
      String(treatments),
      layout,
      String(needed),
      percent(chanceToSee),
      percent(chanceEnough),
    ],
    trials: treatments === 2 ? TOLD : 2000,
    experiment: planKept(plan),
  };
}
