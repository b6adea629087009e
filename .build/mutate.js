import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";

// npm run mutate                                        plants faults in five rooms, and counts what their tests catch
// npm run mutate -- methods                             in one room
// npm run mutate -- methods src/methods/welch.ts        in some of its files, with a comma between two

const FIVE = ["numerics", "methods", "ranges", "questions", "words"];
/** Their tests work much out while they are read; each fault seen then would wait for all of them. */
const READ_LONG = ["questions", "words"];
const root = fileURLToPath(new URL("..", import.meta.url));
const stryker = fileURLToPath(new URL("../node_modules/@stryker-mutator/core/bin/stryker.js", import.meta.url));

const [only, files] = process.argv.slice(2);
for (const room of only === undefined ? FIVE : [only]) {
  const faults = files ?? `src/${room}/**/*.ts`;
  // which tests are to notice: see .vitest.mutation.config.ts
  const aside = READ_LONG.includes(room) ? ["--ignoreStatic"] : [];
  const { status } = spawnSync(
    process.execPath,
    [stryker, "run", ".stryker.config.json", "--mutate", faults, ...aside],
    {
      cwd: root,
      env: { ...process.env, MUTATED_ROOM: room },
      stdio: "inherit",
    },
  );
  if (status !== 0) process.exitCode = 1;
}
