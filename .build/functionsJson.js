import { readdirSync } from "node:fs";
import { join } from "node:path";
import { generateCustomFunctionsMetadata } from "custom-functions-metadata";
import { dropDowns } from "./dropDowns.js";

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
 * @typedef {{ name: string, type: string, customEnumId?: string }} Parameter
 * @typedef {{ id: string, parameters: Parameter[] }} FunctionEntry
 * @param {{ functions: FunctionEntry[] }} metadata
 */
function finished(metadata) {
  const { functions } = metadata;
  for (const parameter of functions.flatMap(({ parameters }) => parameters)) {
    parameter.name = parameter.name.replace(/_$/, "");
  }
  functions.sort((one, other) => (one.id < other.id ? -1 : 1));
  const enums = functions.flatMap(({ id, parameters }) => parameters.flatMap((parameter) => offered(id, parameter)));
  // Without the last line Excel answers for us as soon as one cell of a range holds an error.
  return { ...metadata, enums, allowErrorForDataTypeAny: true };
}

/**
 * Lets Excel offer an argument's words (CustomFunctionsRuntime 1.5); an older Excel overlooks it. Written here, not as
 * enums beside the functions: a member's name would have to be an identifier, and ours hold spaces.
 *
 * Source: https://learn.microsoft.com/office/dev/add-ins/excel/custom-functions-json
 *
 * @param {string} id
 * @param {Parameter} parameter
 */
function offered(id, parameter) {
  const words = dropDowns[id]?.[parameter.name];
  if (words === undefined) return [];
  const customEnumId = `${id}_${parameter.name}`;
  Object.assign(parameter, { type: "string", customEnumId });
  const values = words.map((word) => ({ name: word, stringValue: word, tooltip: "" }));
  return [{ id: customEnumId, type: "string", values }];
}
