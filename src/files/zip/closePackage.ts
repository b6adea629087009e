import { zipSync } from "fflate";
import type { Package } from "./openPackage";

/** Every part carries the same moment, so that the same parts make the same file: zip files count from 1980. */
const moment = "1980-01-01T12:00:00";

/** Packs parts into a file, in their order. */
export function closePackage(parts: Package): Uint8Array<ArrayBuffer> {
  return zipSync(Object.fromEntries(parts), { mtime: moment });
}

/** Packs parts without making them smaller, for a reader that is to unpack nothing by itself. */
export function bundle(parts: Package): Uint8Array<ArrayBuffer> {
  return zipSync(Object.fromEntries(parts), { mtime: moment, level: 0 });
}
