import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { type DuckDBConnection, DuckDBInstance } from "@duckdb/node-api";
import { charts, fit, type landmarks, statistics } from "tapewise";
import { root } from "../../architecture/workspace.ts";

const demo = join(root, "packages/tapewise/demo/charts");

/** The charts of the demo, with what is wrong with them left to their own tests. */
export const demoCharts: readonly charts.SizeChart[] = readdirSync(demo).map((file) =>
  charts.parseChart(readFileSync(join(demo, file), "utf8"), { chart: file, file }),
);

/** A person as a row: means and standard deviations in mm, in the order of the plan. */
export interface Row {
  readonly means: readonly number[];
  readonly sds: readonly number[];
  readonly build: 0 | 1;
}

/** What the library chooses, and how every size fits. */
export interface Chosen {
  readonly pick: string | undefined;
  readonly verdict: string | undefined;
  readonly isClose: boolean;
  readonly probabilities: readonly number[];
  readonly misfits: readonly number[];
}

/** The people of a plan as the columns of the library choose for them: normal beliefs, no looks, no questions. */
export function chooseByLibrary(plan: fit.ColumnPlan, rows: readonly Row[]): readonly Chosen[] {
  const out = fit.createChoiceColumns(rows.length, plan.sizes.length);
  const people = {
    meansMm: Float64Array.from(rows.flatMap(({ means }) => means)),
    sdsMm: Float64Array.from(rows.flatMap(({ sds }) => sds)),
    hasBuild: Uint8Array.from(rows, ({ build }) => build),
  };
  fit.chooseColumns(plan, people, out);
  const ofSizes = (column: Float64Array | undefined, person: number) =>
    Array.from(column?.subarray(person * plan.sizes.length, (person + 1) * plan.sizes.length) ?? []);
  return rows.map((_, person) => ({
    pick: plan.sizes[out.pick[person] ?? -1],
    verdict: fit.columnVerdicts[out.verdict[person] ?? -1],
    isClose: out.isClose[person] === 1,
    probabilities: ofSizes(out.sizeProbabilities, person),
    misfits: ofSizes(out.sizeMisfitsMm, person),
  }));
}

/**
 * Invented people around the sizes of a plan: most near them, some far off, some known exactly, some on an end
 * or in the middle between two ends, where ties are.
 */
export function inventRows(plan: fit.ColumnPlan, count: number, seed: number): readonly Row[] {
  const random = statistics.createRandom(seed);
  const { ends, starts } = plan.tables;
  const choose = (list: ArrayLike<number>): number => list[Math.floor(random.uniform() * list.length)] ?? 0;
  return Array.from({ length: count }, () => {
    const drawn = plan.dimensions.map((_, dimension) => {
      const own = ends.subarray(starts[dimension], starts[dimension + 1]);
      const kind = random.uniform();
      const middle = (choose(own) + choose(own)) / 2;
      const mean = kind < 0.15 ? choose(own) : kind < 0.3 ? middle : choose(own) + 40 * random.normal();
      const sd = random.uniform() < 0.1 ? 0 : random.uniform() < 0.5 ? 5 : 1 + 25 * random.uniform();
      return { mean: Math.max(1, mean), sd };
    });
    return {
      means: drawn.map(({ mean }) => mean),
      sds: drawn.map(({ sd }) => sd),
      build: random.uniform() < 0.3 ? 1 : 0,
    };
  });
}

/** A database in memory with two threads, closed by whoever asked for it. */
export async function openDatabase(): Promise<DuckDBConnection> {
  const instance = await DuckDBInstance.create(":memory:", { threads: "2" });
  return instance.connect();
}

/** Puts people into a table: `id`, `build`, and for each dimension the columns that queries look for by themselves. */
export async function fillPeople(
  connection: DuckDBConnection,
  plan: fit.ColumnPlan,
  rows: readonly Row[],
): Promise<void> {
  const columns = plan.beliefs.flatMap((dimension: landmarks.DimensionId) => {
    const stem = dimension.replaceAll("-", "_");
    return [`${stem}_mean DOUBLE`, `${stem}_sd DOUBLE`];
  });
  await connection.run(`CREATE OR REPLACE TABLE people (id INTEGER, build INTEGER, ${columns.join(", ")})`);
  const appender = await connection.createAppender("people");
  rows.forEach(({ means, sds, build }, id) => {
    appender.appendInteger(id);
    appender.appendInteger(build);
    means.forEach((mean, k) => {
      appender.appendDouble(mean);
      appender.appendDouble(sds[k] ?? Number.NaN);
    });
    appender.endRow();
  });
  appender.closeSync();
}
