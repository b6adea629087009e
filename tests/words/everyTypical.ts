import type { Finding } from "../../src/nouns/finding";
import { typicalComparisons } from "./typicalComparisons";
import { typicalFindings } from "./typicalFindings";
import { typicalMany } from "./typicalMany";
import { typicalPicks } from "./typicalPicks";
import { typicalSeasons } from "./typicalSeasons";

/** Every typical finding by the title of its approved file. */
export const everyTypical: Readonly<Record<string, Finding>> = {
  ...typicalComparisons,
  ...typicalFindings,
  ...typicalMany,
  ...typicalPicks,
  ...typicalSeasons,
};
