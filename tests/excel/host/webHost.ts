import type { HostDoor } from "./fakeExcel";

/**
 * The page around the add-in's frame as Excel on the web is one, for the unmodified office.js: they talk by messages.
 * The function stands alone, so that a test may write it into a page as text.
 *
 * @returns hands an event to the add-in
 */
export function webHost(
  door: HostDoor,
  sets: Readonly<Record<string, string>>,
): (event: number, payload: unknown) => void {
  const names: Record<number, string> = { 2: "documentSelectionChanged", 33: "richApiMessage" };
  let conversation = "";
  const post = (message: object) => {
    const whole = { _messageType: 1, _errorCode: 0, _serializerVersion: 1, _conversationId: conversation, ...message };
    document.querySelector("iframe")?.contentWindow?.postMessage(JSON.stringify(whole), location.origin);
  };
  const appContext = {
    _id: "fairbed",
    _appName: 16,
    _appVersion: 16,
    _appUILocale: "en-US",
    _dataLocale: "en-US",
    _docUrl: `${location.origin}/trial.xlsx`,
    _clientMode: 0,
    _settings: door.settings(),
    _reason: 1,
    _osfControlType: 1,
    _eToken: "",
    _requirementMatrix: JSON.stringify(sets),
    _hostFullVersion: "16.0.14332.20000",
    _initialDisplayMode: 1,
  };
  const answer = async (action: string, event: boolean, data: Record<string, unknown>): Promise<unknown> => {
    if (action === "ContextActivationManager_getAppContextAsync") return appContext;
    if (event) await door.register(Number(data.eventDispId));
    const { DispatchId } = (data.DdaMethod ?? {}) as { DispatchId?: number };
    if (DispatchId === 76) {
      const { Properties } = data.DdaSettingsMethod as { Properties: readonly [string, string][] };
      // 4001 is Office's number for settings that cannot be saved.
      return { Error: (await door.keep(Object.fromEntries(Properties))) ? 0 : 4001 };
    }
    if (DispatchId !== 93) return { Error: 0 };
    const [, , , , body] = data.ArrayData as string[];
    return { Error: 0, Data: [200, [], await door.execute(String(body))] };
  };
  addEventListener("message", async ({ data }) => {
    const message = JSON.parse(data);
    if (message._messageType !== 0) return;
    conversation = message._conversationId;
    const found = await answer(message._actionName, message._actionType === 1, message._data ?? {});
    post({ _actionName: message._actionName, _correlationId: message._correlationId, _responseType: 0, _data: found });
  });
  return (event, payload) => {
    post({ _actionName: names[event], _correlationId: 0, _responseType: 1, _data: { ArrayData: payload } });
  };
}
