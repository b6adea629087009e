import { existsSync } from "node:fs";
import { delimiter, join } from "node:path";

/**
 * @returns {string | undefined} the program file of LibreOffice on this computer; OFFICE_PATH goes first
 */
export function findOffice() {
  const { OFFICE_PATH: chosen, PATH = "", PROGRAMFILES = "" } = process.env;
  if (chosen !== undefined && chosen !== "") return chosen;
  const places = [
    ...PATH.split(delimiter).flatMap((folder) => ["soffice", "libreoffice"].map((name) => join(folder, name))),
    "/Applications/LibreOffice.app/Contents/MacOS/soffice",
    join(PROGRAMFILES, "LibreOffice", "program", "soffice.exe"),
  ];
  return places.find((file) => existsSync(file));
}
