import { answerRequest, type Request } from "./answerRequest";
import { type Area, areaOf } from "./area";
import { workbookObject } from "./excelObjects";
import { type Outcome, outcomes } from "./outcome";
import { fill, type Workbook } from "./workbook";

/** The wire's numbers for Office's events: the selection moved, and a message of Excel's rich interface. */
const selectionMoved = 2;
const richMessage = 33;

/** What a page can ask of its host, whichever way the two are joined. */
export interface HostDoor {
  /** Answers one rich request, both as JSON text. */
  execute(body: string): Promise<string>;
  /** The document's settings when the page opens: texts of JSON, by name. */
  readonly settings: () => Readonly<Record<string, string>>;
  /** Keeps the page's settings in the document, in place of those before; false when Excel does not take them. */
  keep(settings: Readonly<Record<string, string>>): Promise<boolean>;
  /** The page listens to an event from now on. */
  register(event: number): void;
}

/** A fake Excel with one workbook open and one page of ours in it. */
export interface FakeExcel extends HostDoor {
  readonly book: Workbook;
  /** Every request of Excel.run so far, in order. */
  readonly requests: Request[];
  /** Set by whoever joins page and host: hands an event to the page. */
  deliver: (event: number, payload: unknown) => void;
  /** True: no request is answered any more. */
  silent: boolean;
  /** Selects cells as a grower does; several addresses are several areas, none is a chart. */
  select(...addresses: readonly string[]): void;
  /** Types into cells as a grower does. */
  type(address: string, rows: Parameters<typeof fill>[2]): void;
  /** Hands calls of worksheet functions over in one recalculation. */
  invoke(messages: readonly string[]): void;
  /** What a call came to, by its number. */
  outcome(call: number): Promise<Outcome>;
}

export function fakeExcel(book: Workbook): FakeExcel {
  const session = { workbook: workbookObject(book), kept: new Map() };
  const events = new Set<number | string>();
  const results = outcomes();
  const excel: FakeExcel = {
    book,
    requests: [],
    deliver: () => undefined,
    silent: false,
    outcome: results.of,
    settings: () => Object.fromEntries(book.settings),
    async keep(settings) {
      if (excel.silent) return new Promise(() => undefined);
      if (book.settingsRefused) return false;
      book.settings.clear();
      for (const [name, text] of Object.entries(settings)) book.settings.set(name, text);
      return true;
    },
    register: (event) => events.add(event),
    async execute(body) {
      const request: Request = JSON.parse(body);
      notice(request, { events, results });
      if (isOfService(request)) return JSON.stringify(answerRequest(request, session));
      excel.requests.push(request);
      if (excel.silent) return new Promise(() => undefined);
      return JSON.stringify(book.editing ? { Error: editing, Results: [] } : answerRequest(request, session));
    },
    select(...addresses) {
      const [home = ""] = book.sheets.keys();
      const areas = addresses.map((address) => areaOf(address, home)).filter((area) => area !== null);
      book.selected = areas.length === 0 ? "chart" : areas;
      if (events.has(selectionMoved)) excel.deliver(selectionMoved, null);
    },
    type(address, rows) {
      const [home = ""] = book.sheets.keys();
      const area = areaOf(address, home) as Area;
      fill(book, area, rows);
      // 65536 marks an event of the workbook, 10 a change of cells, 16 a calculation.
      const told = JSON.stringify({ worksheetId: area.sheet, address, changeType: "RangeEdited", source: "Local" });
      if (events.has("_RegisterDataChangedEvent")) {
        excel.deliver(richMessage, [[65536, 10, "Workbook", told, 1, false]]);
      }
    },
    invoke(messages) {
      excel.deliver(
        richMessage,
        messages.map((message) => [1, 1000, "", message, 1, false]),
      );
    },
  };
  return excel;
}

const editing = { Code: "InvalidOperationInCellEditMode", Message: "A cell is being edited.", ActionIndex: 0 };

interface Noticed {
  readonly events: Set<number | string>;
  readonly results: ReturnType<typeof outcomes>;
}

/** What a request asks to be told from now on, and what it brings. */
function notice({ Actions }: Request, { events, results }: Noticed): void {
  for (const { Name, ArgumentInfo } of Actions) {
    if (Name.startsWith("_Register")) events.add(Name);
    if (Name.startsWith("SetInvocation")) results.take(ArgumentInfo?.Arguments?.[0] as readonly unknown[]);
  }
}

/** The runtime of the worksheet functions speaks with a service of Excel's, not with the workbook. */
function isOfService({ ObjectPaths }: Request): boolean {
  return Object.values(ObjectPaths).some(({ ObjectPathType }) => ObjectPathType === 2);
}
