import { defineConfig } from "vitest/config";

/** Seeded searches of a million cells and of a hundred thousand trials: a fault that none sees would wait for them all. */
const slow = ["tests/ranges/fuzz.test.ts", "tests/methods/percentRangeTrials.test.ts"];

/** These hold a module under watch, which only a process of their own can. */
const watching = ["tests/functions/answer.test.ts", "tests/questions/twoTreatments.test.ts"];

/** The tests of one room, for `npm run mutate`, which names it. */
export default defineConfig({
  test: {
    include: [`tests/${process.env.MUTATED_ROOM ?? "*"}/**/*.test.ts`],
    exclude: [...slow, ...watching],
    testTimeout: 20_000,
    pool: "threads",
    isolate: false,
  },
});
