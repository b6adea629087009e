import type { Ctor } from "@univerjs/core";
import type { BaseFunction } from "@univerjs/engine-formula";
import type { Sheet } from "../sheet";
import { fileBar } from "./file/fileBar";
import { keptWork } from "./file/unsavedWork";
import { workWithFiles } from "./file/workWithFiles";
import { argumentHelp } from "./functions/argumentHelp";
import { type FunctionText, functionTexts } from "./functions/functionTexts";
import { gridFunction } from "./functions/gridFunction";
import { gridName } from "./functions/gridName";
import { pageFunctions } from "./functions/pageFunctions";
import { type Grid, openGrid } from "./grid";
import { followDarkness, isDark } from "./page/followDarkness";
import { moveFocus } from "./page/moveFocus";
import { turnSheets } from "./page/turnSheets";
import { practiceDoor } from "./practiceDoor";
import { practiceSheet } from "./sheet/practiceSheet";
import { practiceWorkbook } from "./workbook/practiceWorkbook";

/** The cell that is selected at first, so that the pane has an answer to explain. */
const firstAnswer = "H2";

/** The places of the page that the practice sheet fills or listens to. */
export interface PracticePage {
  readonly grid: HTMLElement;
  readonly pane: HTMLElement;
  /** Starts the worker that reads and writes files. */
  startWorker(): Worker;
}

/**
 * Opens the practice workbook in the page, with our worksheet functions in it, and answers with the port through
 * which the pane talks to it. Resolves when the first results stand in the cells.
 */
export async function openPractice(page: PracticePage): Promise<Sheet> {
  const texts = await functionTexts("../functions.json");
  const grid = openGrid({
    container: page.grid,
    workbook: practiceWorkbook(),
    functions: texts.flatMap(engineFunction),
    help: texts.map(argumentHelp),
    dark: isDark(),
  });
  await grid.api.getFormula().onCalculationResultApplied();
  grid.book.getActiveSheet().getRange(firstAnswer).activate();
  const own = texts.map(({ id }) => id);
  await workWithFiles({ grid, bar: fileBar(document), own, startWorker: page.startWorker }, await keptWork());
  return connected(grid, page);
}

function engineFunction(text: FunctionText): [Ctor<BaseFunction>, string][] {
  const worksheetFunction = pageFunctions().get(text.id.toUpperCase());
  return worksheetFunction === undefined ? [] : [[gridFunction(text, worksheetFunction), gridName(text.id)]];
}

function connected(grid: Grid, page: PracticePage): Sheet {
  const sheet = practiceSheet(grid, isDark);
  moveFocus({ pane: page.pane, focusGrid: grid.focus });
  turnSheets(grid);
  followDarkness(grid);
  Object.assign(globalThis, { fairbedPractice: practiceDoor(grid, sheet) });
  return sheet;
}
