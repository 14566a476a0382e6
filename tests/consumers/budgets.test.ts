import { gzipSync } from "node:zlib";
import { build } from "esbuild";
import { expect, test } from "vitest";
import { readWorkspace, root } from "../architecture/workspace.ts";

/** What something costs in a page: bytes after minifying and gzip -9, and the packages that it came from. */
interface Cost {
  readonly bytes: number;
  readonly packages: readonly string[];
}

async function costOf(code: string, external: readonly string[] = ["zod"]): Promise<Cost> {
  const { outputFiles, metafile } = await build({
    stdin: { contents: code, resolveDir: import.meta.dirname },
    absWorkingDir: root,
    bundle: true,
    minify: true,
    format: "esm",
    platform: "neutral",
    target: "es2022",
    conditions: ["@tapewise/source"],
    mainFields: ["module", "main"],
    external: [...external],
    metafile: true,
    write: false,
  });
  const [file] = outputFiles;
  const [output] = Object.values(metafile.outputs);
  if (file === undefined || output === undefined) throw new Error("nothing was bundled");
  const inputs = Object.entries(output.inputs).filter(([, { bytesInOutput }]) => bytesInOutput > 0);
  const packages = inputs.map(
    ([path]) => /^(?:packages|node_modules)\/((?:@[^/]+\/)?[^/]+)/.exec(path)?.[1] ?? path,
  );
  return { bytes: gzipSync(file.contents, { level: 9 }).length, packages: [...new Set(packages)].sort() };
}

/**
 * The most that a reader of a page should have to load, in kB of 1000 bytes, each with its reason. Zod is in none
 * of them but one that says so, since it comes with `schema` entry points only.
 */
const BUDGETS: readonly {
  readonly what: string;
  readonly code: string;
  readonly kB: number;
  readonly why: string;
  /** What is left out of the count; zod where nothing is said. */
  readonly external?: readonly string[];
}[] = [
  {
    what: "recommend with all that it needs",
    code: 'export { recommend } from "@tapewise/fit";',
    kB: 20,
    why: "One answer in a page. About 6 kB are numerics that no platform has (normal and t integrals, joint probabilities), 2 kB the sentences of reasons and issues, and 1.5 kB what readings not yet taken would bring.",
  },
  {
    what: "the main job: text to estimate, chart and choice",
    code: 'export { recommend } from "@tapewise/fit"; export { parseEstimate } from "@tapewise/measurement"; export { safeParseChartCsv } from "@tapewise/charts"; export { parseLength } from "@tapewise/units";',
    kB: 43,
    why: "What a page needs that takes readings and a chart as people write them. The words of studies and of the audit are in none of it.",
  },
  {
    what: "an estimate of readings",
    code: 'export { safeEstimate } from "@tapewise/measurement";',
    kB: 13.5,
    why: "A third of it asks whether readings look like a slip: chi-square and t quantiles, Grubbs' test, and a sentence for each question.",
  },
  {
    what: "units, to convert, round and write lengths",
    code: 'export { formatLength, fromMillimetres, millimetres, roundLength, toMillimetres } from "@tapewise/units";',
    kB: 2.2,
    why: "All that a page needs that shows lengths and reads none. Half of it keeps a rounding exact, whatever the number of digits.",
  },
  {
    what: "units, to read a length",
    code: 'export { safeParseLength } from "@tapewise/units";',
    kB: 4.6,
    why: "0.8 kB is the outcome package, loaded once. 4 kB are passed by the words that a misreading is told in (0.6 kB) and the words that units of other kinds are known by (0.4 kB): without them a reader would say “not a length” and no more.",
  },
  {
    what: "units, all of it, with outcome",
    code: 'export * from "@tapewise/units";',
    kB: 5.8,
    why: "All of it: 1.7 kB are the grammar of what people write, 0.8 kB outcome, 0.7 kB the search for the unit that is meant, 0.6 kB the sentences of fifteen misreadings, 0.6 kB exact arithmetic, 0.5 kB writing, 0.5 kB the signs of word processors, 0.4 kB units and their words. 4 kB would cost one of these: shorter catalogues and tables in place of code save under 30 bytes each after gzip.",
  },
  {
    what: "units without outcome",
    code: 'export * from "@tapewise/units";',
    kB: 5,
    external: ["zod", "@tapewise/outcome"],
    why: "The package's own share of it; no bundle has it without outcome, which every other package needs as well.",
  },
  {
    what: "the schema of charts without zod",
    code: 'export { chartSchema } from "@tapewise/charts/schema";',
    kB: 1.4,
    why: "For who validates with zod already, or with any library that takes Standard Schema.",
  },
  {
    what: "the schema of charts with zod",
    code: 'export { chartSchema } from "@tapewise/charts/schema";',
    kB: 28,
    external: [],
    why: "What zod adds, which nothing else of this library brings: a page that reads charts needs no schema.",
  },
  {
    what: "millimetres",
    code: 'export { millimetres } from "@tapewise/units";',
    kB: 0.7,
    why: "The least that any function costs: it refuses what is no number, with the named error.",
  },
  {
    what: "outcome, all of it",
    code: 'export * from "@tapewise/outcome";',
    kB: 1.9,
    why: "Issues and named errors, which every package gives: they are loaded once.",
  },
];

test.each(BUDGETS)("$what: at most $kB kB", async ({ code, kB, external }) => {
  const { bytes } = await costOf(code, external);
  expect(bytes / 1000).toBeLessThanOrEqual(kB);
  // A budget that is far from what is used would let it grow unseen.
  expect(bytes / 1000).toBeGreaterThan(0.9 * kB);
});

/** What functions of each package bring beside the package itself; every package is asked. */
const ALONE: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>> = {
  outcome: { success: [], InvalidArgumentError: [], formatIssue: [] },
  units: { millimetres: ["outcome"], formatLength: ["outcome"], safeParseLength: ["outcome"] },
  intervals: { relation: [], contains: ["outcome"] },
  statistics: { normalQuantile: ["outcome"], studentTCdf: ["outcome"], mergeMoments: ["outcome"] },
  figures: { element: [], drawSheet: [] },
  tables: { readTable: ["outcome"], readDelimitedText: ["outcome"], detectSeparator: [] },
  landmarks: { plausibleLimits: ["outcome"], dimension: ["outcome"], safeParseDimension: ["outcome"] },
  measurement: { poolSpread: ["outcome"], combineUncertainties: ["outcome"], readingsFor: ["outcome"] },
  charts: { sizesInOrder: [] },
  population: { menReference: [], weightedSummary: ["outcome"] },
  fit: { writePercent: ["outcome"], formBeliefs: ["outcome"] },
  coverage: { writeShare: ["outcome"], describeSample: ["outcome"] },
  afterwards: { lendPacks: ["outcome"], priorAfter: ["outcome"], readOutcomes: ["outcome"] },
};

test.each(
  Object.entries(ALONE).flatMap(([name, functions]) =>
    Object.entries(functions).map(([made, others]) => [name, made, others] as const),
  ),
)("%s: %s brings no package but %j", async (name, made, others) => {
  const { packages } = await costOf(`export { ${made} } from "@tapewise/${name}";`);
  expect(packages).toEqual([name, ...others].sort());
});

test("the facade brings the one package that is used of it, and nothing of its own", async () => {
  const { packages } = await costOf('export { units } from "tapewise";');
  expect(packages.filter((one) => one !== "<stdin>")).toEqual(["outcome", "units"]);
});

/** Packages that no page loads: they bring an engine of their own, which runs under Node only. */
const NOT_FOR_PAGES: readonly string[] = ["duckdb"];

test("every package is asked what one function of it brings", () => {
  const names = readWorkspace().flatMap(({ folder, name }) => (folder === "site" ? [] : [name]));
  const asked = names.filter((name) => !NOT_FOR_PAGES.includes(name));
  expect([...Object.keys(ALONE), "tapewise"].sort()).toEqual(asked.sort());
});

test("zod comes with the schemas and with nothing else", async () => {
  const all = await costOf('export * as all from "tapewise";', []);
  expect(all.packages).not.toContain("zod");
  const schemas = await costOf('export { chartSchema } from "@tapewise/charts/schema";', []);
  expect(schemas.packages).toContain("zod");
});
