// Who may import whom. Rooms are listed from the ground up; a room may import itself and what its row names.
const port =
  "^src/host/(sheet|newSheet|ownSheet|freeSheetName|isAddress|holdsOurCall|blanks|formats|notesText|upkeep)\\.ts$";
const room = (name) => `^src/${name}/`;

const rows = [
  { from: room("nouns"), may: [] },
  { from: room("numerics"), may: [], packages: ["jstat"] },
  { from: room("ranges"), may: [room("nouns")] },
  { from: room("methods"), may: [room("nouns"), room("numerics")] },
  {
    from: room("questions"),
    may: [room("nouns"), room("ranges"), room("methods")],
  },
  { from: room("cells"), may: [room("nouns")] },
  { from: room("words"), may: [room("nouns")] },
  {
    from: room("answers"),
    may: [room("nouns"), room("questions"), room("cells"), room("words")],
  },
  { from: room("functions"), may: [room("answers"), room("nouns"), room("ranges"), port] },
  { from: room("formula"), may: [room("nouns")], packages: ["@borgar/fx"] },
  { from: port, may: [room("nouns")] },
  { from: "^src/host/excel(\\.ts$|/)", may: [port, room("nouns")] },
  // A worker reads and writes files, so that the page knows their types only.
  {
    from: room("host/practice"),
    may: [port, room("nouns")],
    mayTypes: [room("files")],
    packages: ["@univerjs/[^/]+", "react", "react-dom", "rxjs"],
  },
  { from: room("files"), may: [room("nouns")], packages: ["@e965/xlsx", "fflate"] },
  // The pane gets the running answers handed to it, so that it may know their types only.
  {
    from: room("pane"),
    may: [room("nouns"), room("formula"), room("numerics"), room("words"), port],
    mayTypes: [room("answers")],
  },
  { from: room("entry"), may: ["^src/"] },
];

const nameOf = ({ from }) =>
  from
    .replace(/[^a-z/]/g, "")
    .replace(/^src\//, "")
    .replace(/\/$/, "")
    .replaceAll("/", "-");

const looksDownOnly = (row) => ({
  name: `${nameOf(row)}-looks-down-only`,
  severity: "error",
  from: { path: row.from },
  to: {
    path: "^src/",
    pathNot: [row.from, ...row.may, ...(row.mayTypes ?? [])],
  },
});

const typesOnly = (row) => ({
  name: `${nameOf(row)}-knows-types-only`,
  severity: "error",
  from: { path: row.from },
  to: { path: row.mayTypes, dependencyTypesNot: ["type-only"] },
});

const ownPackagesOnly = (row) => ({
  name: `${nameOf(row)}-has-its-own-packages-only`,
  severity: "error",
  from: { path: row.from },
  to: {
    dependencyTypes: ["npm", "npm-dev", "npm-peer", "npm-optional", "npm-no-pkg", "npm-unknown", "core"],
    pathNot: (row.packages ?? []).map((name) => `node_modules/${name}/`),
  },
});

module.exports = {
  forbidden: [
    ...rows.map(looksDownOnly),
    ...rows.filter((row) => row.mayTypes).map(typesOnly),
    ...rows.map(ownPackagesOnly),
    { name: "no-cycles", severity: "error", from: {}, to: { circular: true } },
    {
      name: "no-unresolvable",
      severity: "error",
      from: {},
      to: { couldNotResolve: true },
    },
    {
      name: "no-unknown-room",
      severity: "error",
      from: { path: "^src/", pathNot: rows.map((row) => row.from) },
      to: {},
    },
    {
      name: "reached-from-an-entry",
      comment:
        "Code that no page runs, if only its test does, is dead; a file in an unknown room shows here too. " +
        "Numerics may hold a distribution before its first use: it is a library of its own, checked against its grid.",
      severity: "error",
      from: { path: "^src/entry/[^/]+\\.ts$" },
      to: { path: "^src/(?!entry/|numerics/).*\\.ts$", pathNot: "\\.d\\.ts$", reachable: false },
    },
  ],
  options: {
    tsConfig: { fileName: "tsconfig.json" },
    tsPreCompilationDeps: true,
    doNotFollow: { path: "node_modules" },
    enhancedResolveOptions: {
      extensions: [".ts", ".js", ".json"],
      exportsFields: ["exports"],
      conditionNames: ["import", "types"],
    },
  },
};
