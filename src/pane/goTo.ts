import type { Context } from "./context";
import type { Target } from "./placing";
import { asTrouble, troubleText } from "./trouble";

/** Selects a cell in the sheet. Where the sheet refuses, the part that is open looks anew, and so says why. */
export function goTo({ sheet: name, address }: Target, { sheet, announce, look }: Context): void {
  void sheet.select(name, address).catch((reason: unknown) => {
    announce(troubleText(asTrouble(reason)));
    return look();
  });
}
