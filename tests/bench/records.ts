import { answer } from "../../src/functions/answer";
import { parsed, sumsByKey } from "./bareWork";
import { pickLog } from "./pickLog";
import { contest, heading } from "./report";
import type { Matrix } from "./trial";

/** A long record: 2 000 plants picked 50 times each, and a look at as many cells. */
export function records(): void {
  heading("Long records");
  const { plants, dates, amounts, plainAmounts } = pickLog(2_000, 50, 7);
  const tally = (name: string, picked: Matrix): void => {
    contest(
      `TALLYPICKS, 100 000 picks of 2 000 plants${name}`,
      () => answer("TALLYPICKS", [plants, dates, picked], {}),
      [{ name: "a loop that sums by plant", work: () => sumsByKey(plants, plainAmounts), target: { most: 5 } }],
    );
  };
  tally("", plainAmounts);
  tally(", each tenth with a unit typed", amounts);
  contest("LOOKOVER, 100 000 cells", () => answer("LOOKOVER", [amounts], {}), [
    { name: "a loop that parses each cell", work: () => parsed(amounts), target: { most: 10 } },
  ]);
}
