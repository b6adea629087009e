import { unzipSync } from "fflate";
import type { FileProblem } from "../fileProblem";
import { checkSum } from "./checkSum";
import { type ZipEntry, zipDirectory } from "./zipDirectory";

/** The parts of a workbook file by their name in the zip, in the file's order. */
export type Package = ReadonlyMap<string, Uint8Array>;

const megabyte = 1_000_000;

/** How much a file may hold, in megabytes: as it is, and unpacked. */
export const limits = { packed: 100, unpacked: 500 } as const;

/**
 * Unpacks a workbook file, or says why it may not be opened. What would unpack to more than the limit is refused by
 * the sizes that the zip's directory names; a part that is not what the directory says is damage.
 */
export function openPackage(bytes: Uint8Array): Package | FileProblem {
  const refused = refusal(bytes);
  if (refused !== undefined) return refused;
  const directory = zipDirectory(bytes);
  if (directory === undefined) return { problem: "damaged" };
  const unpacked = directory.reduce((sum, entry) => sum + entry.unpacked, 0) / megabyte;
  if (unpacked > limits.unpacked) {
    return { problem: "bomb", megabytes: Math.round(unpacked), limit: limits.unpacked };
  }
  const parts = unpack(bytes, directory);
  return parts === undefined ? { problem: "damaged" } : kindOf(parts);
}

/** The unpacker writes into room of the size that the directory names, so that a part cannot grow beyond it. */
function unpack(bytes: Uint8Array, directory: readonly ZipEntry[]): Package | undefined {
  try {
    const within = new Map(Object.entries(unzipSync(bytes)));
    const whole = directory.every(({ name, sum }) => {
      const part = within.get(name);
      return part !== undefined && checkSum(part) === sum;
    });
    return whole ? new Map(directory.map(({ name }) => [name, within.get(name) ?? new Uint8Array()])) : undefined;
  } catch {
    return undefined;
  }
}

function refusal(bytes: Uint8Array): FileProblem | undefined {
  if (bytes.length === 0) return { problem: "empty-file" };
  if (bytes.length > limits.packed * megabyte) {
    return { problem: "too-large", megabytes: Math.round(bytes.length / megabyte), limit: limits.packed };
  }
  if (startsWith(bytes, [0xd0, 0xcf, 0x11, 0xe0])) {
    return { problem: holdsWideText(bytes, "EncryptedPackage") ? "encrypted" : "old-excel" };
  }
  return startsWith(bytes, [0x50, 0x4b]) ? undefined : { problem: "other-kind" };
}

/** OpenDocument's own marker goes first; a package without a list of its parts' kinds is no workbook of Excel's. */
function kindOf(parts: Package): Package | FileProblem {
  const excel = parts.has("[Content_Types].xml") && parts.has("_rels/.rels") && !parts.has("mimetype");
  return excel && !parts.has("xl/workbook.bin") ? parts : { problem: "other-kind" };
}

function startsWith(bytes: Uint8Array, start: readonly number[]): boolean {
  return start.every((byte, at) => bytes[at] === byte);
}

/** Whether the bytes hold a text in two bytes a letter, as the directory of an old Office file does. */
function holdsWideText(bytes: Uint8Array, text: string): boolean {
  const wide = [...text].flatMap((letter) => [letter.charCodeAt(0), 0]);
  const first = wide[0] ?? 0;
  for (let at = bytes.indexOf(first); at >= 0; at = bytes.indexOf(first, at + 1)) {
    if (wide.every((byte, step) => bytes[at + step] === byte)) return true;
  }
  return false;
}
