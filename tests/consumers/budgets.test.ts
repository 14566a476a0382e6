import { gzipSync } from "node:zlib";
import { build } from "esbuild";
import { expect, test } from "vitest";
import { root } from "../architecture/workspace.ts";

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
 * of them, since it comes with `schema` entry points only.
 */
const BUDGETS: readonly {
  readonly what: string;
  readonly code: string;
  readonly kB: number;
  readonly why: string;
}[] = [
  {
    what: "recommend with all that it needs",
    code: 'export { recommend } from "@tapewise/fit";',
    kB: 20.8,
    why: "One answer in a page. About 6 kB are numerics that no platform has (normal and t integrals, joint probabilities), 2 kB the sentences of reasons and issues, and 2.4 kB the error budget of readings not yet taken.",
  },
  {
    what: "the main job: text to estimate, chart and choice",
    code: 'export { recommend } from "@tapewise/fit"; export { parseEstimate } from "@tapewise/measurement"; export { safeParseChartCsv } from "@tapewise/charts"; export { parseLength } from "@tapewise/units";',
    kB: 45.9,
    why: "What a page needs that takes readings and a chart as people write them.",
  },
  {
    what: "units, all of it, with outcome",
    code: 'export * from "@tapewise/units";',
    kB: 5.8,
    why: "All that reads, converts, rounds and writes lengths. Half of it tells fifteen ways to misread a length apart and says so in a sentence.",
  },
  {
    what: "units without outcome",
    code: 'export * from "@tapewise/units";',
    kB: 5,
    why: "The package's own share.",
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

test.each(BUDGETS)("$what: at most $kB kB", async ({ what, code, kB }) => {
  const { bytes } = await costOf(
    code,
    what.endsWith("without outcome") ? ["zod", "@tapewise/outcome"] : ["zod"],
  );
  expect(bytes / 1000).toBeLessThanOrEqual(kB);
  // A budget that is far from what is used would let it grow unseen.
  expect(bytes / 1000).toBeGreaterThan(0.9 * kB);
});

/** One function of each package that is about its own subject only. */
const ALONE: readonly (readonly [string, string])[] = [
  ["units", "formatLength"],
  ["units", "safeParseLength"],
  ["intervals", "relation"],
  ["statistics", "normalQuantile"],
  ["tables", "readTable"],
  ["landmarks", "plausibleLimits"],
  ["landmarks", "dimension"],
];

test.each(ALONE)(
  "%s: %s brings no other package but outcome, whose issues and errors it gives",
  async (name, made) => {
    const { packages } = await costOf(`export { ${made} } from "@tapewise/${name}";`);
    expect(packages).toContain(name);
    expect(packages.filter((one) => one !== name && one !== "outcome")).toEqual([]);
  },
);

test("zod comes with the schemas and with nothing else", async () => {
  const all = await costOf('export * as all from "tapewise";', []);
  expect(all.packages).not.toContain("zod");
  const schemas = await costOf('export { chartSchema } from "@tapewise/charts/schema";', []);
  expect(schemas.packages).toContain("zod");
});
