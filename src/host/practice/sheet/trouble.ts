import type { SheetTrouble } from "../../sheet";

/** The record with which the practice sheet rejects what it would not do. */
export function trouble(kind: SheetTrouble["trouble"], where: string): SheetTrouble {
  return { trouble: kind, where };
}
