import { SSF } from "@e965/xlsx";
import type { Book, BookSheet } from "../book";
import { type FileProblem, isFileProblem } from "../fileProblem";
import type { Knowing } from "../knowing";
import { type Opened, openBook, type Source } from "../open/openBook";
import { days1904, type SheetReading } from "../open/readSheet";
import { partOf, textOf } from "../xml/parts";
import { closePackage } from "../zip/closePackage";
import { addCharts } from "./addCharts";
import { addSheet } from "./addSheet";
import { blankPackage, blankStyles } from "./blankPackage";
import { addPart, type Draft, usualPart, write } from "./draft";
import { dynamicMark } from "./dynamicFormulas";
import { finishWorkbook } from "./finishWorkbook";
import { type PatchedSheet, patchSheet } from "./patchSheet";
import { type Styler, styler } from "./styler";
import type { Writing } from "./writtenCell";

/** A saved workbook. */
export interface Saved {
  readonly bytes: Uint8Array<ArrayBuffer>;
  /** Formulas that could be saved by their value only: "Plan!B7". */
  readonly onlyValues: readonly string[];
}

/** Says how many sheets are written, and of how many. */
type Progress = (written: number, of: number) => void;

/**
 * The file of a workbook: the file that it was opened from with the changed cells in it, or a new one. A sheet goes
 * by its name; a sheet that the file does not have is added at the end. Every part that holds no change is kept.
 *
 * @param original the bytes that the workbook was opened from; null of a workbook that comes from no file
 * @param present the workbook as it is now; its looks begin with those that were read from the file
 */
export function saveBook(
  original: Uint8Array | null,
  present: Book,
  { knowing, onSheet = () => {} }: { knowing: Knowing; onSheet?: Progress },
): Saved | FileProblem {
  const opened = original === null ? blank() : openBook(original, knowing);
  return isFileProblem(opened) ? opened : saved(opened, present, { knowing, onSheet });
}

/** A workbook while it is saved. */
interface Saving {
  readonly source: Source;
  readonly draft: Draft;
  readonly styles: Styler;
  readonly writing: Writing;
  readonly onlyValues: string[];
}

function saved(
  { source, leftAlone, book }: Opened,
  present: Book,
  { knowing, onSheet }: { knowing: Knowing; onSheet: Progress },
): Saved {
  const saving = begin(source, present, knowing);
  const patches = present.sheets.map((sheet, at) => {
    const patch = saveSheet(saving, sheet);
    onSheet(at + 1, present.sheets.length);
    return patch;
  });
  finishStyles(saving);
  const { draft, onlyValues } = saving;
  finishWorkbook(draft, source.workbook.path, {
    formulasChanged: patches.some(({ formulasChanged }) => formulasChanged),
    stale: leftAlone.length > 0 && patches.some(({ changed }) => changed),
    names: present.names.filter(({ name }) => !book.names.some((known) => known.name === name)),
  });
  return { bytes: closePackage(draft), onlyValues };
}

function begin(source: Source, present: Book, { own }: Knowing): Saving {
  const draft: Draft = new Map(source.parts);
  const path = source.workbook.path;
  const text = source.workbook.styles === undefined ? blankStyles : textOf(source.parts, source.workbook.styles);
  const styles = styler(text, source.looks);
  const onlyValues: string[] = [];
  const isDate = (style: number) => SSF.is_date(source.looks[style]?.pattern ?? "General");
  let mark: { readonly number: number | undefined } | undefined;
  const writing: Writing = {
    own,
    styleOf: (look = 0, like) =>
      look < Math.max(1, source.looks.length) ? look : styles.styleOf(present.looks[look] ?? {}, like),
    dynamicMark: () => {
      mark ??= { number: dynamicMark(draft, path) };
      return mark.number;
    },
    onlyValue: (address) => onlyValues.push(address),
    daysOff: (style) => (source.workbook.from1904 && isDate(style) ? days1904 : 0),
  };
  return { source, draft, styles, writing, onlyValues };
}

function saveSheet({ source, draft, writing }: Saving, sheet: BookSheet): PatchedSheet {
  const known = source.sheets.find(({ entry }) => entry.name === sheet.name);
  const reading: SheetReading = known ?? addSheet(draft, source.workbook.path, sheet);
  const patch = patchSheet(reading, sheet, writing);
  // The file's own sheets have their charts already.
  const xml = known === undefined ? addCharts(draft, { path: reading.entry.path, xml: patch.xml }, sheet) : patch.xml;
  if (xml !== reading.xml) write(draft, reading.entry.path, xml);
  return patch;
}

function finishStyles({ source, draft, styles }: Saving): void {
  const { path, styles: known } = source.workbook;
  const text = styles.text();
  if (known === undefined) addPart(draft, path, usualPart("styles", "xl/styles.xml", text));
  else if (text !== textOf(source.parts, known)) draft.set(known, partOf(text));
}

/** A new file, as if it had been opened. */
function blank(): Opened {
  const workbook = {
    path: "xl/workbook.xml",
    sheets: [],
    styles: undefined,
    strings: undefined,
    theme: undefined,
    from1904: false,
    names: [],
  };
  const source = { parts: blankPackage(), workbook, sheets: [], looks: [{}] };
  return { book: { sheets: [], looks: [{}], names: [] }, leftAlone: [], source };
}
