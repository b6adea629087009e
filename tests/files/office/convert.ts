import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { findOffice } from "../../../.build/findOffice.js";
import { installOffice } from "../../../.build/installOffice.js";

/**
 * A file as LibreOffice turns it into another kind.
 *
 * @param from the ending of what the bytes are: "fods"
 * @param to LibreOffice's filter: "xlsx:Calc MS Excel 2007 XML"
 */
export function converted(bytes: Uint8Array, from: string, to: string): Uint8Array {
  const office = findOffice() ?? installOffice();
  const folder = mkdtempSync(join(tmpdir(), "fairbed-office-"));
  try {
    writeFileSync(join(folder, `in.${from}`), bytes);
    const profile = `-env:UserInstallation=${pathToFileURL(join(folder, "profile")).href}`;
    const output = join(folder, "out");
    const words = [profile, "--headless", "--convert-to", to, "--outdir", output, join(folder, `in.${from}`)];
    const { stderr } = spawnSync(office, words, { encoding: "utf8" });
    const made = join(output, `in.${to.split(":")[0]}`);
    try {
      return readFileSync(made);
    } catch {
      throw new Error(`LibreOffice made no ${to}: ${stderr}`);
    }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
