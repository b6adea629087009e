import type { HostDoor } from "./fakeExcel";

/** What joins the page to its host on Windows, and the way events take into the page. */
export interface WindowsJoint {
  readonly external: object;
  readonly deliver: (event: number, payload: unknown) => void;
}

/**
 * `window.external` as Excel for Windows offers it, for the unmodified office.js. The function stands alone, so that a
 * test may also write it into a page as text.
 *
 * @param sets the requirement sets as Office has them: {"ExcelApi":"1.12"}
 */
export function windowsExternal(door: HostDoor, sets: Readonly<Record<string, string>>): WindowsJoint {
  const handlers = new Map<number, (event: number, payload: unknown) => void>();
  const safeArray = (value: unknown): unknown =>
    Array.isArray(value) ? { toArray: () => value.map(safeArray) } : value;
  const answers = {
    GetAppType: 1,
    GetSolutionRef: "fairbed",
    GetAppVersionMajor: 16,
    GetAppVersionMinor: 1,
    GetAppUILocale: "en-US",
    GetAppDataLocale: "en-US",
    GetDocUrl: "trial.xlsx",
    GetAppCapabilities: 0,
    GetActivationMode: 1,
    GetControlIntegrationLevel: 1,
    GetSolutionToken: "",
    GetSupportedMatrix: JSON.stringify(sets),
    GetHostFullVersion: "16.0.14332.20000",
    GetOfficeThemeInfo: JSON.stringify({ bodyBackgroundColor: 0x262626 }),
  };
  const context = {
    ...Object.fromEntries(Object.entries(answers).map(([name, answer]) => [name, () => answer])),
    GetSettings: () => ({
      Read(names: string[], texts: string[]) {
        for (const [name, text] of Object.entries(door.settings())) texts[names.push(name) - 1] = text;
      },
      // 4001 is Office's number for settings that cannot be saved.
      WriteAsync(names: readonly string[], texts: readonly string[], done: (code: number) => void) {
        const written = Object.fromEntries(names.map((name, at) => [name, texts[at] ?? ""]));
        void door.keep(written).then((kept) => done(kept ? 0 : 4001));
      },
    }),
  };
  const external = {
    GetHostInfo: () => "Excel$Win32$16.01$en-US$x$$disableLogging$3",
    GetContext: () => context,
    // 93 is a request of Excel.run; what else office.js asks at its start may stay without content.
    Execute(id: number, given: unknown[][], callback: (answer: unknown, code: number) => void) {
      if (id !== 93) return callback(safeArray([0, null]), 0);
      const body = String(given[0]?.[4]);
      void door.execute(body).then((answer) => callback(safeArray([0, 200, [], answer]), 0));
    },
    RegisterEvent(
      id: number,
      _: string,
      handler: (event: number, payload: unknown) => void,
      done: (code: number) => void,
    ) {
      handlers.set(id, handler);
      door.register(id);
      done(0);
    },
    UnregisterEvent(id: number, _: string, done: (code: number) => void) {
      handlers.delete(id);
      done(0);
    },
  };
  return { external, deliver: (event, payload) => handlers.get(event)?.(event, safeArray(payload)) };
}
