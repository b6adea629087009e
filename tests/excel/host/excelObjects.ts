import { type Area, addressOf, lastColumn, lastRow, wholeSheet } from "./area";
import { chartsObject, pageLayout, tablesObject } from "./furniture";
import { type HostObject, refusal } from "./hostObject";
import { namesObject } from "./namesObject";
import { addedSheet, deleteSheet, moveSheet, renameSheet } from "./sheetList";
import { change, contentOf, eachCell, fill, locate, usedArea, type Workbook } from "./workbook";

/** The workbook as Excel's object model shows it: as much of it as Fairbed asks for. */
export function workbookObject(book: Workbook): HostObject {
  return {
    objects: {
      Worksheets: () => worksheets(book),
      Names: () => namesObject(book, rangeObject),
      Tables: () => namedTables(book),
    },
    methods: {
      GetSelectedRange: () => rangeObject(book, onlyArea(book)),
      GetSelectedRanges: () => ({ properties: { AreaCount: () => selectedAreas(book).length } }),
    },
  };
}

/** The workbook's tables by their names. */
function namedTables(book: Workbook): HostObject {
  const item = (name: string, area: Area): HostObject => ({
    properties: { Name: () => name },
    objects: { Worksheet: () => worksheet(book, area.sheet) },
    methods: { GetDataBodyRange: () => rangeObject(book, { ...area, row: area.row + 1, rows: area.rows - 1 }) },
  });
  return {
    methods: {
      GetItemOrNullObject: (name) => {
        const area = book.namedTables.get(String(name));
        return area === undefined ? { missing: true } : item(String(name), area);
      },
    },
  };
}

function selectedAreas({ selected }: Workbook): readonly Area[] {
  if (selected === "chart") throw refusal("InvalidSelection");
  return selected;
}

function onlyArea(book: Workbook): Area {
  const [area, ...others] = selectedAreas(book);
  if (area === undefined || others.length > 0) throw refusal("InvalidSelection");
  return area;
}

function worksheets(book: Workbook): HostObject {
  const item = (name: unknown) => {
    if (!book.sheets.has(String(name))) throw refusal("ItemNotFound");
    return worksheet(book, String(name));
  };
  return {
    item,
    items: () => [...book.sheets.keys()].map(item),
    methods: {
      GetItem: item,
      GetItemOrNullObject: (name) => (book.sheets.has(String(name)) ? item(name) : { missing: true }),
      Add: (name) => worksheet(book, addedSheet(book, String(name))),
    },
  };
}

function worksheet(book: Workbook, name: string): HostObject {
  return {
    properties: { Id: () => name, Name: () => name, Position: () => [...book.sheets.keys()].indexOf(name) },
    objects: {
      Names: () => namesObject(book, rangeObject, `${name}!`),
      Tables: () => tablesObject(book, name),
      Charts: () => chartsObject(book, name),
      PageLayout: () => pageLayout(book, name),
    },
    settable: {
      Name: (wanted) => renameSheet(book, name, String(wanted)),
      Position: (place) => moveSheet(book, name, Number(place)),
    },
    methods: {
      GetRange: (reference) => {
        const area = locate(book, String(reference), name);
        // Names and tables of other sheets are not known here.
        if (area?.sheet !== name) throw refusal("InvalidArgument");
        return rangeObject(book, area);
      },
      GetRangeByIndexes: (row, column, rows, columns) =>
        rangeObject(book, {
          sheet: name,
          row: Number(row),
          column: Number(column),
          rows: Number(rows),
          columns: Number(columns),
        }),
      GetUsedRangeOrNullObject: () => usedRange(book, wholeSheet(name)),
      Activate: () => null,
      Delete: () => deleteSheet(book, name),
    },
  };
}

function usedRange(book: Workbook, area: Area): HostObject {
  const used = usedArea(book, area);
  return used === null ? { missing: true } : rangeObject(book, used);
}

function rangeObject(book: Workbook, area: Area): HostObject {
  return {
    objects: { Worksheet: () => worksheet(book, area.sheet), Format: () => formatObject(book, area) },
    properties: { ...places(area), ...contents(book, area) },
    settable: {
      Formulas: (rows) => write(book, area, rows),
      Values: (rows) => write(book, area, rows),
      NumberFormat: (rows) => setFormat(book, area, rows),
    },
    methods: {
      GetCell: (row, column) =>
        rangeObject(book, {
          ...area,
          row: area.row + Number(row),
          column: area.column + Number(column),
          rows: 1,
          columns: 1,
        }),
      GetOffsetRange: (down, across) =>
        rangeObject(book, { ...area, row: area.row + Number(down), column: area.column + Number(across) }),
      GetResizedRange: (down, across) =>
        rangeObject(book, { ...area, rows: area.rows + Number(down), columns: area.columns + Number(across) }),
      GetEntireColumn: () => rangeObject(book, { ...area, row: 0, rows: lastRow }),
      GetUsedRangeOrNullObject: () => usedRange(book, area),
      GetSpillingToRangeOrNullObject: () => {
        const reached = book.spills.get(addressOf(area));
        return reached === undefined ? { missing: true } : rangeObject(book, reached);
      },
      Clear: () => {
        mayWrite(book, area);
        eachCell(area, (cell) => change(book, cell, { value: null, formula: "" }));
      },
      Select: () => {
        book.selected = [area];
      },
    },
  };
}

function formatObject(book: Workbook, area: Area): HostObject {
  const font: HostObject = {
    settable: { Bold: (bold) => void eachCell(area, (cell) => change(book, cell, { bold: bold === true })) },
  };
  return {
    objects: { Font: () => font },
    settable: { ColumnWidth: (width) => void book.widths.set(addressOf(area), Number(width)) },
  };
}

function places(area: Area): NonNullable<HostObject["properties"]> {
  return {
    Address: () => addressOf(area),
    RowIndex: () => area.row,
    ColumnIndex: () => area.column,
    RowCount: () => area.rows,
    ColumnCount: () => area.columns,
    IsEntireColumn: () => area.rows === lastRow,
    IsEntireRow: () => area.columns === lastColumn,
  };
}

/** A whole column or row gives null instead of its cells, as Excel does. */
function contents(book: Workbook, area: Area): NonNullable<HostObject["properties"]> {
  const whole = area.rows === lastRow || area.columns === lastColumn;
  const cells = (of: (cell: Area) => unknown) => () => (whole ? null : eachCell(area, of));
  return {
    Values: cells((cell) => plain(book, cell)),
    ValueTypes: cells((cell) => typeOf(book, cell)),
    Formulas: cells((cell) => contentOf(book, cell).formula || plain(book, cell)),
    FormulasLocal: cells((cell) => local(contentOf(book, cell).formula) || plain(book, cell)),
    NumberFormat: cells((cell) => contentOf(book, cell).format),
  };
}

function plain(book: Workbook, cell: Area): unknown {
  const { value } = contentOf(book, cell);
  return value !== null && typeof value === "object" ? value.error : (value ?? "");
}

function typeOf(book: Workbook, cell: Area): string {
  const { value, formula } = contentOf(book, cell);
  if (value === null) return formula === "" ? "Empty" : "String";
  if (typeof value === "object") return "Error";
  return { number: "Double", string: "String", boolean: "Boolean" }[typeof value as "number" | "string" | "boolean"];
}

/** The formula as a German Excel shows it. */
function local(formula: string): string {
  return formula.replaceAll(",", ";");
}

function write(book: Workbook, area: Area, rows: unknown): void {
  mayWrite(book, area);
  const typed = rows as string[][];
  // Semicolons between arguments are the local form: `formulas` takes English with commas only.
  if (typed.flat().some((text) => /^=.*\([^"]*;/.test(String(text)))) throw refusal("InvalidArgument");
  fill(book, area, typed);
}

function setFormat(book: Workbook, area: Area, rows: unknown): void {
  mayWrite(book, area);
  const formats = rows as string[][];
  eachCell(area, (cell) => {
    const format = formats[cell.row - area.row]?.[cell.column - area.column] ?? formats[0]?.[0] ?? "General";
    change(book, cell, { format });
  });
}

function mayWrite({ protectedSheets }: Workbook, { sheet }: Area): void {
  if (protectedSheets.has(sheet)) throw refusal("AccessDenied");
}
