import { strToU8, zipSync } from "fflate";
import { expect, it } from "vitest";
import { isFileProblem } from "../../../src/files/fileProblem";
import { openPackage } from "../../../src/files/zip/openPackage";
import { excelFile, sheetPart, texts } from "../excelFile";

const file = excelFile({ sheets: [["S", sheetPart("")]] });

/** A file with some bytes written over. */
function over(bytes: Uint8Array, at: number, values: readonly number[]): Uint8Array {
  const copy = bytes.slice();
  copy.set(values, at);
  return copy;
}

function wide(text: string): number[] {
  return [...text].flatMap((letter) => [letter.charCodeAt(0), 0]);
}

it("unpacks every part, in the file's order", () => {
  const parts = openPackage(file);
  if (isFileProblem(parts)) throw new Error(parts.problem);
  expect([...parts.keys()]).toEqual(Object.keys(texts(file)));
});

it("knows locked and old workbooks by their own frame", () => {
  const frame = [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1, ...Array(504).fill(0)];
  expect(openPackage(Uint8Array.from([...frame, ...wide("EncryptedPackage")]))).toEqual({ problem: "encrypted" });
  expect(openPackage(Uint8Array.from([...frame, ...wide("Workbook")]))).toEqual({ problem: "old-excel" });
});

it("refuses what is no workbook of Excel's", () => {
  const zipped = (parts: Record<string, string>) =>
    zipSync(Object.fromEntries(Object.entries(parts).map(([name, text]) => [name, strToU8(text)])));
  expect(openPackage(new Uint8Array())).toEqual({ problem: "empty-file" });
  expect(openPackage(strToU8("bed,kg\n1,2"))).toEqual({ problem: "other-kind" });
  expect(openPackage(zipped({ mimetype: "application/vnd.oasis.opendocument.spreadsheet" }))).toEqual({
    problem: "other-kind",
  });
  expect(openPackage(zipped({ ...texts(file), "xl/workbook.bin": "" }))).toEqual({ problem: "other-kind" });
});

it("finds damage anywhere: cut short, a byte changed, a size that lies, a part twice", () => {
  const refused = { problem: "damaged" };
  for (const length of [30, 200, file.length - 30]) expect(openPackage(file.slice(0, length))).toEqual(refused);
  const plain = zipSync({ "[Content_Types].xml": strToU8("<Types/>"), "_rels/.rels": strToU8("") }, { level: 0 });
  expect(isFileProblem(openPackage(plain))).toBe(false);
  expect(openPackage(over(plain, 30 + "[Content_Types].xml".length + 2, [0x78]))).toEqual(refused);
  const at = entryOf(file, "xl/styles.xml");
  expect(openPackage(over(file, at + 24, [10, 0, 0, 0]))).toEqual(refused);
  const twice = zipSync({ "xl/a.xml": strToU8("a"), "xl/b.xml": strToU8("b") });
  expect(openPackage(over(twice, entryOf(twice, "xl/b.xml") + 46, [...strToU8("xl/a.xml")]))).toEqual(refused);
});

it("refuses a part with a name made to poison objects, which could not be saved again", () => {
  const named = zipSync({ protoprot: strToU8("a") });
  expect(openPackage(over(named, entryOf(named, "protoprot") + 46, [...strToU8("__proto__")]))).toEqual({
    problem: "damaged",
  });
  expect(Object.keys(Object.prototype)).toEqual([]);
});

it("refuses a small file that would unpack to more than the limit, before it unpacks", () => {
  const zeros = zipSync({ "xl/worksheets/sheet1.xml": new Uint8Array(6_000_000) });
  const bomb = over(zeros, entryOf(zeros, "xl/worksheets/sheet1.xml") + 24, [0, 0, 0, 0x7f]);
  expect(openPackage(bomb)).toEqual({ problem: "bomb", megabytes: 2131, limit: 500 });
});

it("opens 50 MB, and refuses more than the limit", () => {
  const noise = new Uint8Array(50_000_000);
  for (let at = 0, seed = 1; at < noise.length; at += 4) {
    seed = (seed * 1_103_515_245 + 12_345) % 2_147_483_648;
    noise.set([seed & 255, (seed >> 8) & 255, (seed >> 16) & 255, (seed >> 24) & 255], at);
  }
  const parts = Object.fromEntries(Object.entries(texts(file)).map(([name, text]) => [name, strToU8(text)]));
  const large = zipSync({ ...parts, "xl/media/image1.png": noise }, { level: 0 });
  const opened = openPackage(large);
  expect(isFileProblem(opened)).toBe(false);
  expect(openPackage(new Uint8Array(101_000_000))).toEqual({ problem: "too-large", megabytes: 101, limit: 100 });
});

/** Where a part's entry in the zip's directory starts. */
function entryOf(bytes: Uint8Array, name: string): number {
  const letters = strToU8(name);
  for (let at = bytes.length - 46; at >= 0; at--) {
    const isEntry = bytes[at] === 0x50 && bytes[at + 1] === 0x4b && bytes[at + 2] === 1 && bytes[at + 3] === 2;
    if (isEntry && letters.every((byte, step) => bytes[at + 46 + step] === byte)) return at;
  }
  throw new Error(`no ${name}`);
}
