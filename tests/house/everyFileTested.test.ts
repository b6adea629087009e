import { existsSync } from "node:fs";
import { posix } from "node:path";
import { expect, it } from "vitest";
import { code, filesUnder, pureRooms, type SourceFile } from "./files";

/** A file of types alone has nothing to run, so there is nothing to test. */
function runs(file: SourceFile): boolean {
  return !file.path.endsWith(".d.ts") && /^(export )?(async )?(const|let|function|class)\b/m.test(code(file));
}

function hasOwnTest({ path }: SourceFile): boolean {
  return existsSync(path.replace(/^src/, "tests").replace(/\.ts$/, ".test.ts"));
}

/** The files of the same room that a file is put together from. */
function partsOf(file: SourceFile, room: readonly SourceFile[]): readonly SourceFile[] {
  const imported = [...code(file).matchAll(/^(?:import|export)\b[^;]*?from "(\.[^"]+)"/gms)].map(
    ([, name = ""]) => `${posix.join(posix.dirname(file.path), name)}.ts`,
  );
  return room.filter(({ path }) => imported.includes(path));
}

it.each([...pureRooms, "formula", "files"])(
  "every file of %s has its test of the same name, or is part of one that has",
  (name) => {
    const room = filesUnder(`src/${name}`, /\.ts$/);
    const tested = new Set(room.filter(hasOwnTest));
    for (const file of tested) for (const part of partsOf(file, room)) tested.add(part);
    expect(room.filter((file) => runs(file) && !tested.has(file)).map(({ path }) => path)).toEqual([]);
  },
);
