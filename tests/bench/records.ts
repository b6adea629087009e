import { answer } from "../../src/functions/answer";
import { parsed, sumsByKey } from "./bareWork";
import { pickLog } from "./pickLog";
import { contest, heading } from "./report";

/** A long record: 2 000 plants picked 50 times each, and a look at as many cells. */
export function records(): void {
  heading("Long records");
  const { plants, dates, amounts } = pickLog(2_000, 50, 7);
  contest("TALLYPICKS, 100 000 picks of 2 000 plants", () => answer("TALLYPICKS", [plants, dates, amounts], {}), [
    { name: "a loop that sums by plant", work: () => sumsByKey(plants, amounts), target: { most: 5 } },
  ]);
  contest("LOOKOVER, 100 000 cells", () => answer("LOOKOVER", [amounts], {}), [
    { name: "a loop that parses each cell", work: () => parsed(amounts), target: { most: 10 } },
  ]);
}
