import type { Block, Case } from "../experiment";
import { type SideBySide, sideBySide } from "../sideBySide";
import { changeText, percent, TOLD } from "./text";
import { ANY_DOWN, ANY_UP, NOT_SETTLED, rangesHold, verdictShare } from "./verdictShares";

/** One plant of each treatment in every bed, compared within the beds, and once as if there were none. */
export const pairs: Block = {
  title: "Two treatments in beds, one plant of each in every bed",
  headings: ["Beds", "Unevenness in a bed", "Unevenness of beds", "Compared", "True change"],
  shares: [
    verdictShare("Any up", ANY_UP),
    verdictShare("Up, enough to matter", ["up-enough"]),
    verdictShare("Any down", ANY_DOWN),
    verdictShare("Leaning up", ["leaning-up"]),
    verdictShare("Not settled", NOT_SETTLED),
    ...rangesHold.map(({ heading, events }) => ({ heading, events })),
  ],
  cases: [0, 0.5].flatMap((change) => [
    ...[4, 6, 12].map((beds) => bedCase({ beds, unevenness: 0.2, between: 0.4, how: "beds" }, change)),
    bedCase({ beds: 8, unevenness: 0.35, between: 0.3, how: "beds" }, change),
    bedCase({ beds: 8, unevenness: 0.2, between: 0.4, how: "beds" }, change),
    bedCase({ beds: 8, unevenness: 0.2, between: 0.4, how: "separate" }, change),
  ]),
  meaning: () =>
    "Where beds differ, comparing within them finds true gains far more often than ignoring them, with no more false alarms. Ignored beds hide the gain: the last line of either half.",
};

interface Beds {
  readonly beds: number;
  readonly unevenness: number;
  readonly between: number;
  readonly how: "beds" | "separate";
}

function bedCase({ beds, unevenness, between, how }: Beds, change: number): Case {
  const trial: SideBySide = {
    kind: "gamma",
    plants: [beds, beds],
    unevenness: [unevenness, unevenness],
    beds: between,
    change,
    options: { how },
  };
  const compared = how === "beds" ? "in beds" : "beds ignored";
  return {
    about: [String(beds), percent(unevenness), percent(between), compared, changeText(change)],
    trials: TOLD,
    experiment: sideBySide(trial),
  };
}
