import { readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";

/** A text file of the project: its path from the project's folder, with forward slashes, and what it says. */
export interface SourceFile {
  readonly path: string;
  readonly text: string;
}

/** The rooms that know no page, no host, no clock and no chance. */
export const pureRooms = ["nouns", "numerics", "ranges", "methods", "questions", "cells", "words", "answers"];

/**
 * @param folder from the project's folder; a file is taken as itself
 * @param ending what the files' names end with
 */
export function filesUnder(folder: string, ending: RegExp): SourceFile[] {
  if (statSync(folder).isFile()) return [{ path: folder, text: readFileSync(folder, "utf8") }];
  const names = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((name) => ending.test(name));
  return names.sort().map((name) => ({
    path: join(folder, name).replaceAll("\\", "/"),
    text: readFileSync(join(folder, name), "utf8"),
  }));
}

/** The file's code without its comments. */
export function code({ text }: SourceFile): string {
  return text.replace(/\/\*[\s\S]*?\*\/|(?<!:)\/\/.*$/gm, "");
}
