import { readdirSync } from "node:fs";
import { join } from "node:path";
import { generateCustomFunctionsMetadata } from "custom-functions-metadata";

/**
 * A webpack plugin that writes functions.json, Excel's list of our worksheet functions, from the doc comments
 * above them. An error in a comment fails the build and leaves no file behind.
 */
export class FunctionsJson {
  /** @param {string} folder the folder whose files hold the functions, one each */
  constructor(folder) {
    this.folder = folder;
  }

  /** @param {import("webpack").Compiler} compiler */
  apply(compiler) {
    const { Compilation, WebpackError, sources } = compiler.webpack;
    compiler.hooks.thisCompilation.tap("FunctionsJson", (compilation) => {
      const step = {
        name: "FunctionsJson",
        stage: Compilation.PROCESS_ASSETS_STAGE_ADDITIONAL,
      };
      compilation.hooks.processAssets.tapPromise(step, async () => {
        try {
          compilation.emitAsset("functions.json", new sources.RawSource(await functionsJson(this.folder)));
        } catch (trouble) {
          compilation.errors.push(new WebpackError(`functions.json: ${trouble}`));
        }
      });
    });
  }
}

/**
 * @param {string} folder
 * @returns {Promise<string>} the text of functions.json
 */
export async function functionsJson(folder) {
  const files = readdirSync(folder).filter((name) => name.endsWith(".ts"));
  const { errors, metadataJson } = await generateCustomFunctionsMetadata(files.map((name) => join(folder, name)));
  if (errors.length > 0) throw new Error(errors.join("\n"));
  if (metadataJson === "") throw new Error(`no @customfunction in ${folder}`);
  return `${JSON.stringify(finished(JSON.parse(metadataJson)), null, 2)}\n`;
}

/**
 * @typedef {{ id: string, parameters: { name: string }[] }} FunctionEntry
 * @param {{ functions: FunctionEntry[] }} metadata
 */
function finished(metadata) {
  for (const { parameters } of metadata.functions) {
    for (const parameter of parameters) parameter.name = parameter.name.replace(/_$/, "");
  }
  metadata.functions.sort((one, other) => (one.id < other.id ? -1 : 1));
  // Without this line Excel answers for us as soon as one cell of a range holds an error.
  return { ...metadata, allowErrorForDataTypeAny: true };
}
