import { spawnSync } from "node:child_process";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import webpack from "webpack";

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
  const { status } = spawnSync(process.execPath, ["--expose-gc", join(built, "bench.cjs")], {
    stdio: "inherit",
    cwd: home,
  });
  process.exit(status ?? 1);
});
