import { spawn } from "node:child_process";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import webpack from "webpack";
import { findBrowser } from "./findBrowser.js";
import { serve } from "./serve.js";

/** Builds tests/bench/bench.ts as the product is built, and runs it in a process of its own. */

const home = dirname(dirname(fileURLToPath(import.meta.url)));
const built = join(home, "dist-bench");

const compiler = webpack({
  mode: "production",
  context: home,
  target: "node20",
  entry: { bench: "./tests/bench/bench.ts" },
  output: { path: built, filename: "[name].cjs", clean: true },
  externals: { "playwright-core": "commonjs playwright-core" },
  resolve: { extensions: [".ts", ".js"] },
  module: {
    rules: [
      { test: /\.ts$/, loader: "ts-loader", options: { transpileOnly: true, compilerOptions: { noEmit: false } } },
    ],
  },
  optimization: { minimize: false },
  performance: { hints: false },
  devtool: false,
});

compiler.run((trouble, stats) => {
  if (trouble || stats === undefined || stats.hasErrors()) {
    console.error(trouble ?? stats?.toString("errors-only"));
    process.exit(1);
  }
  void run();
});

/** Serves the built pages as long as the program runs, which learns their address and the browser to use. */
async function run() {
  const { address, close } = await serve(0);
  const child = spawn(process.execPath, ["--expose-gc", join(built, "bench.cjs"), address, findBrowser() ?? ""], {
    stdio: "inherit",
    cwd: home,
  });
  child.on("exit", (status) => {
    close();
    process.exitCode = status ?? 1;
  });
}
