import type { SheetTrouble } from "../host/sheet";

const sentences: Readonly<Record<SheetTrouble["trouble"], (where: string) => string>> = {
  editing: () => "A cell is being typed in. Press Enter to finish, then click the cell again.",
  "not-cells": () => "No cells are selected. Click a cell.",
  "several-areas": () => "Several areas are selected. Click one cell, or select one block.",
  "no-such-range": (where) => `The sheet has no ${where || "such range"}. Check the reference.`,
  protected: (where) => `${where || "The sheet"} is protected. Unprotect it first.`,
  "not-empty": (where) => `${where || "The cell"} is not empty.`,
  "not-kept": () => "The trial's notes could not be kept with this workbook. Try once more.",
  "half-made": (where) => `The sheet “${where}” could not be finished. Delete it, then try once more.`,
  unreadable: (where) => `${where || "The sheet"} could not be read just now. Click the cell again.`,
};

/** What went wrong between pane and sheet, and what to do about it: one or two sentences. */
export function troubleText({ trouble, where }: SheetTrouble): string {
  return sentences[trouble](where);
}

/** A rejection of the port as the record it promises; anything else is a programmer's mistake and is thrown on. */
export function asTrouble(reason: unknown): SheetTrouble {
  if (isTrouble(reason)) return reason;
  throw reason;
}

/** What to go on with when the spreadsheet would not answer: `.catch(unlessTrouble([]))`. */
export function unlessTrouble<Instead>(instead: Instead): (reason: unknown) => Instead {
  return (reason) => {
    asTrouble(reason);
    return instead;
  };
}

function isTrouble(reason: unknown): reason is SheetTrouble {
  return typeof reason === "object" && reason !== null && "trouble" in reason && "where" in reason;
}
