import type { WorksheetFunction } from "./standInFunctions";

const key = Symbol.for("fairbed.associated");

/**
 * The worksheet functions of this page, by id. They live on `globalThis` because the stand-in is a script of its
 * own that runs before the functions file, and the practice sheet reads them later.
 */
export function pageFunctions(): Map<string, WorksheetFunction> {
  const page = globalThis as { [key]?: Map<string, WorksheetFunction> };
  page[key] ??= new Map();
  return page[key];
}
