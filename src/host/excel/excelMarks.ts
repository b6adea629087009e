import { isMark, numberOfMark } from "../ownSheet";
import { inExcel } from "./inExcel";

/** A sheet of ours in Excel, and the name that marks it. */
export interface OwnExcelSheet {
  readonly sheet: string;
  readonly mark: string;
  /** Its number among the sheets, from 0. */
  readonly place: number;
}

/** What the workbook's names say of sheets of ours. */
export interface Marks {
  readonly sheets: readonly OwnExcelSheet[];
  /** Names whose sheet is gone. */
  readonly stale: readonly string[];
}

/** Reads the marks, the newest last. */
export function excelMarks(): Promise<Marks> {
  return inExcel("", async (context) => {
    const { names } = context.workbook;
    names.load("items/name");
    await context.sync();
    const marks = names.items
      .filter(({ name }) => isMark(name))
      .map((item) => ({ mark: item.name, cell: item.getRangeOrNullObject() }));
    for (const { cell } of marks) cell.load("worksheet/name,worksheet/position");
    await context.sync();
    return {
      sheets: marks
        .flatMap(({ mark, cell }) => (cell.isNullObject ? [] : [markedBy(mark, cell.worksheet)]))
        .sort((one, other) => numberOfMark(one.mark) - numberOfMark(other.mark)),
      stale: marks.flatMap(({ mark, cell }) => (cell.isNullObject ? [mark] : [])),
    };
  });
}

function markedBy(mark: string, { name, position }: Excel.Worksheet): OwnExcelSheet {
  return { sheet: name, mark, place: position };
}
