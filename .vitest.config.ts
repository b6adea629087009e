import { defineConfig } from "vitest/config";

const inBrowser = ["tests/browser/**/*.test.ts", "tests/worksheet/**/*.test.ts", "tests/excel/pages/**/*.test.ts"];

export default defineConfig({
  test: {
    reporters: ["default", "./.build/plainCount.js"],
    projects: [
      {
        test: {
          name: "node",
          include: ["tests/**/*.test.ts"],
          exclude: inBrowser,
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
