/** One rung of the ladder: a package, what it is about, and the packages it may import. */
export interface Rung {
  readonly level: number;
  readonly package: string;
  readonly subject: string;
  readonly mayImport: readonly string[];
}

const rungs: readonly Rung[] = [
  {
    level: 0,
    package: "outcome",
    subject: "coded issues, value-or-issues outcomes, named errors, message catalogue",
    mayImport: [],
  },
  {
    level: 1,
    package: "units",
    subject: "lengths: parse what people write, convert, round, format",
    mayImport: ["outcome"],
  },
  {
    level: 1,
    package: "intervals",
    subject: "bounds, relations, unions, overlap, gaps",
    mayImport: ["outcome"],
  },
  {
    level: 1,
    package: "tables",
    subject: "delimited text as people keep it: cells with their line and column",
    mayImport: ["outcome"],
  },
  {
    level: 1,
    package: "statistics",
    subject: "distributions, sample summaries, quantile types, seeded random numbers",
    mayImport: ["outcome"],
  },
  {
    level: 1,
    package: "figures",
    subject: "pictures as SVG text: elements, and sheets with title, description and notes",
    mayImport: [],
  },
  {
    level: 2,
    package: "landmarks",
    subject: "points of the body, dimensions between them, how to take each one, cautions",
    mayImport: ["outcome", "units", "intervals", "tables", "statistics", "figures"],
  },
  {
    level: 3,
    package: "measurement",
    subject: "repeated readings to an estimate with its uncertainty",
    mayImport: ["outcome", "units", "intervals", "tables", "statistics", "figures", "landmarks"],
  },
  {
    level: 3,
    package: "charts",
    subject: "size charts: schema, import, audit",
    mayImport: ["outcome", "units", "intervals", "tables", "statistics", "figures", "landmarks"],
  },
  {
    level: 4,
    package: "population",
    subject: "how dimensions are distributed among people; priors",
    mayImport: [
      "outcome",
      "units",
      "intervals",
      "tables",
      "statistics",
      "figures",
      "landmarks",
      "measurement",
    ],
  },
  {
    level: 4,
    package: "fit",
    subject: "estimate and chart to a choice, its reasons and the next step",
    mayImport: [
      "outcome",
      "units",
      "intervals",
      "tables",
      "statistics",
      "figures",
      "landmarks",
      "measurement",
      "charts",
    ],
  },
  {
    level: 5,
    package: "coverage",
    subject: "population and chart: share served, stock shares, cut points",
    mayImport: [
      "outcome",
      "units",
      "intervals",
      "tables",
      "statistics",
      "figures",
      "landmarks",
      "measurement",
      "charts",
      "population",
      "fit",
    ],
  },
  {
    level: 6,
    package: "afterwards",
    subject: "after the choice: the check on the body, exchanges as evidence, returns, lending",
    mayImport: [
      "outcome",
      "units",
      "intervals",
      "tables",
      "statistics",
      "figures",
      "landmarks",
      "measurement",
      "charts",
      "population",
      "fit",
      "coverage",
    ],
  },
  {
    level: 7,
    package: "tapewise",
    subject: "the facade, one namespace a package, and the `tapewise` command",
    mayImport: [
      "outcome",
      "units",
      "intervals",
      "tables",
      "statistics",
      "figures",
      "landmarks",
      "measurement",
      "charts",
      "population",
      "fit",
      "coverage",
      "afterwards",
    ],
  },
  {
    level: 8,
    package: "duckdb",
    subject: "people in tables: choices as portable SQL, Parquet and CSV through DuckDB",
    mayImport: ["tapewise"],
  },
  {
    level: 8,
    package: "site",
    subject: "documentation and playground",
    mayImport: ["tapewise"],
  },
];

/**
 * Which package may import which: the only place that says so. The table in DEVELOPERS.md is
 * compared with it, and every import and every manifest is checked against it.
 */
export const ladder: ReadonlyMap<string, Rung> = new Map(rungs.map((rung) => [rung.package, rung]));

/** The packages of the only code that may use Node: the commands, the log, and what drives a native engine. */
export const nodePackages: ReadonlySet<string> = new Set(["duckdb", "tapewise"]);

/** Entry points that are for Node alone, as their documentation says: what they reach may use it. */
export const nodeEntryPoints: ReadonlySet<string> = new Set([
  "packages/duckdb/src/index.ts",
  "packages/tapewise/src/log/index.ts",
]);

/** The name a package is imported by. */
export function importName(packageName: string): string {
  return packageName === "tapewise" || packageName === "site" ? packageName : `@tapewise/${packageName}`;
}
