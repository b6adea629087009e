/** What a zip's directory says of one part. */
export interface ZipEntry {
  readonly name: string;
  /** Bytes once unpacked. */
  readonly unpacked: number;
  /** Check sum of the unpacked bytes. */
  readonly sum: number;
}

const END = 0x06054b50;
const ENTRY = 0x02014b50;
const endLength = 22;
const longestComment = 65_535;

/**
 * Reads the directory at the end of a zip file (PKWARE's APPNOTE.TXT 6.3, sections 4.3.12 and 4.3.16).
 *
 * @returns undefined when there is none, or when it is cut short or names a part twice
 */
export function zipDirectory(bytes: Uint8Array): readonly ZipEntry[] | undefined {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = endOfDirectory(view);
  if (end === undefined) return undefined;
  const entries: ZipEntry[] = [];
  let at = view.getUint32(end + 16, true);
  for (let left = view.getUint16(end + 10, true); left > 0; left--) {
    if (at + 46 > end || view.getUint32(at, true) !== ENTRY) return undefined;
    const nameLength = view.getUint16(at + 28, true);
    entries.push({
      name: new TextDecoder().decode(bytes.subarray(at + 46, at + 46 + nameLength)),
      unpacked: view.getUint32(at + 24, true),
      sum: view.getUint32(at + 16, true),
    });
    at += 46 + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  return new Set(entries.map(({ name }) => name)).size === entries.length ? entries : undefined;
}

function endOfDirectory(view: DataView): number | undefined {
  const first = Math.max(0, view.byteLength - endLength - longestComment);
  for (let at = view.byteLength - endLength; at >= first; at--) {
    if (view.getUint32(at, true) === END) return at;
  }
  return undefined;
}
