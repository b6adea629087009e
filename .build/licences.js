import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

const packageFolder = /^(.*[\\/]node_modules[\\/](?:@[^\\/]+[\\/])?[^\\/]+)[\\/]/;

/** A webpack plugin that writes the licences of all packages whose code is in the bundle into one file. */
export class Licences {
  /** @param {string} filename the file's name within the output folder */
  constructor(filename) {
    this.filename = filename;
  }

  /** @param {import("webpack").Compiler} compiler */
  apply(compiler) {
    const { Compilation, sources } = compiler.webpack;
    compiler.hooks.thisCompilation.tap("Licences", (compilation) => {
      const step = {
        name: "Licences",
        stage: Compilation.PROCESS_ASSETS_STAGE_ADDITIONAL,
      };
      compilation.hooks.processAssets.tap(step, () => {
        const text = notes(packageFolders(compilation));
        if (text !== "") compilation.emitAsset(this.filename, new sources.RawSource(text));
      });
    });
  }
}

/**
 * @param {import("webpack").Compilation} compilation
 * @returns {string[]}
 */
function packageFolders(compilation) {
  const folders = [...compilation.modules].flatMap(files).map((file) => packageFolder.exec(file)?.[1]);
  return [...new Set(folders)].filter((folder) => folder !== undefined).sort();
}

/**
 * One module may be several joined into one.
 *
 * @typedef {{ identifier: () => string, resource?: string, modules?: Files[] }} Files
 * @type {(module: Files) => string[]}
 */
function files({ resource = "", modules = [] }) {
  return [resource, ...modules.flatMap(files)];
}

/**
 * Each licence once, below the names of all packages under it.
 *
 * @param {string[]} folders
 */
function notes(folders) {
  /** @type {Map<string, string[]>} */
  const packages = new Map();
  for (const folder of folders) {
    const { name, version, licence } = about(folder);
    packages.set(licence, [...(packages.get(licence) ?? []), `${name} ${version}`]);
  }
  return [...packages].map(([licence, names]) => `${names.join("\n")}\n\n${licence}\n`).join("\n\n");
}

/** @param {string} folder */
function about(folder) {
  const { name, version, license } = JSON.parse(readFileSync(join(folder, "package.json"), "utf8"));
  const file = readdirSync(folder).find((entry) => /^licen[cs]e/i.test(entry));
  const licence = file === undefined ? `Licence: ${license}` : readFileSync(join(folder, file), "utf8").trim();
  return { name, version, licence };
}
