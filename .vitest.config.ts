import { defineConfig } from "vitest/config";

const inBrowser = ["tests/browser/**/*.test.ts", "tests/worksheet/**/*.test.ts", "tests/excel/pages/**/*.test.ts"];

// These swap a module for a watched one (vi.mock), which only a process of their own can hold.
const watchingModules = ["tests/functions/answer.test.ts", "tests/questions/twoTreatmentsOnce.test.ts"];

export default defineConfig({
  test: {
    reporters: ["default", "./.build/plainCount.js"],
    // Vitest leaves one core free, which on a machine of two is half of it.
    maxWorkers: "100%",
    projects: [
      {
        test: {
          name: "node",
          include: ["tests/**/*.test.ts"],
          exclude: [...inBrowser, ...watchingModules],
          testTimeout: 20_000,
          // Starting a process and reading the modules anew for each of some 350 files took twice the tests' own time.
          pool: "threads",
          isolate: false,
        },
      },
      {
        test: {
          name: "watched",
          include: watchingModules,
          testTimeout: 20_000,
        },
      },
      {
        test: {
          name: "browser",
          include: inBrowser,
          globalSetup: "./.build/testServer.js",
          fileParallelism: false,
          sequence: { groupOrder: 1 },
          testTimeout: 120_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
});
