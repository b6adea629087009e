import { resolve } from "node:path";
import CopyPlugin from "copy-webpack-plugin";
import HtmlPlugin from "html-webpack-plugin";
import CssPlugin from "mini-css-extract-plugin";
import MinimizerPlugin from "minimizer-webpack-plugin";
import webpack from "webpack";
import { FunctionsJson } from "./.build/functionsJson.js";
import { Licences } from "./.build/licences.js";
import { version } from "./.build/version.js";

const here = import.meta.dirname;
const dist = resolve(here, "dist");
const ownVersion = new webpack.DefinePlugin({ FAIRBED_VERSION: JSON.stringify(version(here)) });

/**
 * Three bundles: the worksheet functions (the same file everywhere), Excel's pane, and the practice sheet.
 *
 * @param {{ address?: string }} env address: where the built files will be hosted; it goes into the manifest
 */
export default function configuration({ address = "https://localhost:3000" }) {
  return [functions(), taskpane(address), practice()];
}

/** Runs in any JavaScript context that offers CustomFunctions.associate, so it may touch nothing else. */
function functions() {
  return {
    ...shared("functions"),
    entry: { functions: "./src/entry/functions.ts" },
    output: {
      path: dist,
      filename: "[name].js",
      publicPath: "",
      chunkLoading: false,
      wasmLoading: false,
    },
    plugins: [ownVersion, new FunctionsJson(resolve(here, "src/functions")), new Licences("functions.LICENCES.txt")],
  };
}

/** @param {string} address */
function taskpane(address) {
  return {
    ...shared("taskpane"),
    entry: { taskpane: "./src/entry/taskpane.ts" },
    output: { path: dist, filename: "[name].[contenthash].js" },
    plugins: [
      ownVersion,
      new HtmlPlugin({
        template: "src/entry/taskpane.html",
        filename: "taskpane.html",
      }),
      new CssPlugin({ filename: "[name].[contenthash].css" }),
      new CopyPlugin({
        patterns: [
          manifest(address),
          { from: "manifest/icons/*.png", to: "icons/[name][ext]" },
          { from: "manifest/_headers", to: "_headers", toType: "file" },
        ],
      }),
      new Licences("taskpane.LICENCES.txt"),
    ],
  };
}

function practice() {
  return {
    ...shared("practice"),
    entry: {
      standIn: "./src/entry/standIn.ts",
      practice: "./src/entry/practice.ts",
    },
    output: {
      path: resolve(dist, "practice"),
      filename: fileOfChunk,
      chunkFilename: "[name].[contenthash].js",
      clean: true,
    },
    plugins: [
      new HtmlPlugin({
        template: "src/entry/practice.html",
        filename: "index.html",
        chunks: ["practice"],
      }),
      new CssPlugin({ filename: "[name].[contenthash].css" }),
      new Licences("LICENCES.txt"),
    ],
    optimization: {
      splitChunks: {
        cacheGroups: {
          engine: { test: /node_modules[\\/](?!@e965|fflate)/, chunks: "async", name: "engine" },
          // Reads and writes files in a worker of its own.
          reader: { test: /node_modules[\\/](@e965|fflate)/, chunks: "async", name: "reader" },
        },
      },
      // The grid's engine is megabytes of finished code: shrinking it would take minutes of every build.
      minimizer: [new MinimizerPlugin({ exclude: /(engine|reader)\./, extractComments: false })],
    },
  };
}

/**
 * The page names standIn.js itself, before the worksheet functions; all other names change with their content.
 *
 * @type {(about: { chunk?: { name?: string } }) => string}
 */
function fileOfChunk({ chunk }) {
  return chunk?.name === "standIn" ? "[name].js" : "[name].[contenthash].js";
}

/** @param {string} address */
function manifest(address) {
  const hosted = new URL(address).href.replace(/\/$/, "");
  return {
    from: "manifest/manifest.xml",
    transform: (/** @type {Buffer} */ xml) => xml.toString().replaceAll("https://localhost:3000", hosted),
  };
}

/**
 * @param {string} name
 * @returns {import("webpack").Configuration}
 */
function shared(name) {
  return {
    name,
    mode: "production",
    context: here,
    target: ["web", "es2022"],
    devtool: false,
    resolve: { extensions: [".ts", ".js"] },
    module: {
      rules: [
        {
          test: /\.ts$/,
          loader: "ts-loader",
          options: { transpileOnly: true, compilerOptions: { noEmit: false } },
        },
        { test: /\.css$/, use: [CssPlugin.loader, "css-loader"] },
        { test: /[\\/]jstat[\\/]dist[\\/]/, loader: resolve(here, ".build/jstatParts.js") },
      ],
    },
    optimization: {
      minimizer: [new MinimizerPlugin({ extractComments: false, minimizerOptions: { compress: { passes: 3 } } })],
    },
    performance: { hints: false },
    stats: "errors-warnings",
  };
}
