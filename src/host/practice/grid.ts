import { type Ctor, type IWorkbookData, LocaleType, LogLevel, Univer } from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import { type BaseFunction, FormulaDataModel, type IFunctionInfo, IFunctionService } from "@univerjs/engine-formula";
import {
  CalculationMode,
  type FWorkbook,
  ILayoutService,
  SheetInterceptorService,
  UniverSheetsCorePreset,
} from "@univerjs/preset-sheets-core";
import "@univerjs/preset-sheets-core/lib/index.css";
import english from "@univerjs/preset-sheets-core/locales/en-US";
import { paintCharts } from "./chart/paintCharts";
import { repairSort } from "./repairSort";

/** The running spreadsheet: its programming door, its workbook, and what the door leaves out. */
export interface Grid {
  readonly api: FUniver;
  /** The workbook that is open now; another one after a file was opened. */
  readonly book: FWorkbook;
  /** Knows formulas and the cells that a spilled result fills. */
  readonly formulas: FormulaDataModel;
  /** Names of all functions that formulas may call. */
  functions(): readonly string[];
  /** Gives the keyboard back to the cells. */
  focus(): void;
}

/** What the spreadsheet starts with. */
export interface GridStart {
  readonly container: HTMLElement;
  readonly workbook: IWorkbookData;
  readonly functions: [Ctor<BaseFunction>, string][];
  readonly help: IFunctionInfo[];
  readonly dark: boolean;
}

/** Opens the spreadsheet in the page. */
export function openGrid(start: GridStart): Grid {
  repairSort();
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: english },
    darkMode: start.dark,
    logLevel: LogLevel.WARN,
  });
  for (const plugin of preset(start).plugins) {
    if (Array.isArray(plugin)) univer.registerPlugin(...plugin);
    else univer.registerPlugin(plugin);
  }
  const api = FUniver.newAPI(univer);
  api.createWorkbook(start.workbook);
  const injector = univer.__getInjector();
  paintCharts(injector.get(SheetInterceptorService));
  return {
    api,
    get book() {
      return presentBook(api);
    },
    formulas: injector.get(FormulaDataModel),
    functions: () => [...injector.get(IFunctionService).getExecutors().keys()].map(String),
    focus: () => injector.get(ILayoutService).focus(),
  };
}

function presentBook(api: FUniver): FWorkbook {
  const book = api.getActiveWorkbook();
  if (book === null) throw new Error("the grid holds no workbook");
  return book;
}

/** The formula bar is part of what Univer calls the header; without the toolbar nothing else of it is left. */
function preset(start: GridStart) {
  return UniverSheetsCorePreset({
    container: start.container,
    header: true,
    toolbar: false,
    formulaBar: true,
    footer: { sheetBar: true, statisticBar: false, menus: false, zoomSlider: false },
    formula: {
      function: start.functions,
      description: start.help,
      initialFormulaComputing: CalculationMode.FORCED,
    },
  });
}
