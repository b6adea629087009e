const SHOWN = Symbol.for("fairbed.formats");

/** The note stands on globalThis because a host may run the functions in a context of its own. */
const session = globalThis as { [SHOWN]?: string };

let asked: () => boolean = () => false;

/** Names who can say whether the spreadsheet shows a result in the number format that it brings along. */
export function formatsShownWhen(chosen: () => boolean): void {
  asked = chosen;
}

/** Whether a result may bring its number format along; where not, it is a plain number. */
export function formatsShown(): boolean {
  return session[SHOWN] === "shown" || asked();
}
