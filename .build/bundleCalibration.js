import { resolve } from "node:path";
import { pathToFileURL } from "node:url";
import webpack from "webpack";

const here = resolve(import.meta.dirname, "..");

/**
 * Bundles the simulation with the shipped functions for Node.
 *
 * @returns {Promise<string>} the module's address
 */
export function bundleCalibration() {
  const path = resolve(here, "reports");
  return new Promise((found, failed) => {
    webpack(configuration(path), (trouble, stats) => {
      if (trouble) return failed(trouble);
      if (stats?.hasErrors()) return failed(new Error(stats.toString("errors-only")));
      return found(pathToFileURL(resolve(path, "calibrate.mjs")).href);
    });
  });
}

/**
 * @param {string} path
 * @returns {import("webpack").Configuration}
 */
function configuration(path) {
  return {
    mode: "production",
    context: here,
    target: "node20",
    entry: "./tests/calibration/calibrate.ts",
    experiments: { outputModule: true },
    output: { path, filename: "calibrate.mjs", library: { type: "module" } },
    resolve: { extensions: [".ts", ".js"] },
    module: {
      rules: [
        { test: /\.ts$/, loader: "ts-loader", options: { transpileOnly: true, compilerOptions: { noEmit: false } } },
        { test: /[\\/]jstat[\\/]dist[\\/]/, loader: resolve(here, ".build/jstatParts.js") },
      ],
    },
    optimization: { minimize: false },
    performance: { hints: false },
  };
}
