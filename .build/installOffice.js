import { findOffice } from "./findOffice.js";
import { installPackage } from "./installPackage.js";

/**
 * Installs Debian's LibreOffice Calc where that needs no question.
 *
 * @returns {string} LibreOffice's program file
 */
export function installOffice() {
  installPackage("libreoffice-calc");
  const found = findOffice();
  if (found !== undefined) return found;
  throw new Error("The tests of workbook files need LibreOffice: install it, or name its program in OFFICE_PATH.");
}
