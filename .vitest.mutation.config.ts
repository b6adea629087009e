import { defineConfig } from "vitest/config";

/** Seeded searches of thousands of sheets or trials: a fault that none sees would wait for them all. */
const slow = [
  "tests/ranges/fuzz.test.ts",
  "tests/methods/percentRangeTrials.test.ts",
  "tests/questions/lookOverAnyLog.test.ts",
  "tests/functions/anyArguments.test.ts",
  "tests/functions/cells.test.ts",
  "tests/functions/laws*.test.ts",
  "tests/functions/pickNuisances.test.ts",
  "tests/functions/unitsAlike.test.ts",
];

/** These hold a module under watch, which only a process of their own can. */
const watching = ["tests/functions/answer.test.ts", "tests/questions/twoTreatmentsOnce.test.ts"];

/** Which rooms' tests are to notice: a question's numbers are held against R where the worksheet asks it. */
const noticing: Readonly<Record<string, string>> = { questions: "{questions,functions}" };

const room = process.env.MUTATED_ROOM ?? "*";

/** The tests of one room, for `npm run mutate`, which names it. */
export default defineConfig({
  test: {
    include: [`tests/${noticing[room] ?? room}/**/*.test.ts`],
    exclude: [...slow, ...watching],
    testTimeout: 20_000,
    pool: "threads",
    isolate: false,
  },
});
