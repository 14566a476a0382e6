import type { DuckDBConnection } from "@duckdb/node-api";
import { choicesSql, type PeopleTable } from "@tapewise/duckdb";
import { charts, fit, type landmarks, outcome } from "tapewise";
import { beforeAll, describe, expect, test } from "vitest";
import { chooseByLibrary, demoCharts, fillPeople, inventRows, openDatabase } from "./library.ts";

const inMm: PeopleTable = { people: "people", id: "id", unit: "mm", hasBuild: "build" };
const PEOPLE = 2000;

/** What may be known of everybody, for all demo charts. */
const KNOWN: readonly (readonly landmarks.DimensionId[])[] = [
  ["torso-length"],
  ["torso-length", "hip-belt-girth"],
  ["torso-length", "hip-girth"],
  ["hip-belt-girth"],
];
const cases = demoCharts.flatMap((chart) =>
  KNOWN.map((read) => ({ name: `${chart.chart}, by ${read}`, chart, read })),
);

let connection: DuckDBConnection;
beforeAll(async () => {
  connection = await openDatabase();
});

async function ask(sql: string): Promise<readonly Record<string, unknown>[]> {
  return (await connection.runAndReadAll(sql)).getRowObjectsJS();
}

function planOf(chart: charts.SizeChart, read: readonly landmarks.DimensionId[]): fit.ColumnPlan {
  return outcome.unwrap(fit.safeCompileColumns(chart, { read }));
}

describe("the choices of the query are those of the library", () => {
  const refused: string[] = [];
  let closeOnes = 0;

  test.each(cases)("$name", async ({ name, chart, read }) => {
    const compiled = fit.safeCompileColumns(chart, { read });
    if (!compiled.ok) {
      refused.push(`${name}: ${compiled.issues.map(({ code }) => code)}`);
      expect(compiled.issues.length).toBeGreaterThan(0);
      return;
    }
    const plan = compiled.value;
    const rows = inventRows(plan, PEOPLE, 1);
    await fillPeople(connection, plan, rows);
    const chosen = chooseByLibrary(plan, rows);
    const answers = await ask(`SELECT * FROM (${choicesSql(plan, inMm)}) ORDER BY id`);
    expect(answers.map(({ id }) => id)).toEqual(rows.map((_, id) => id));
    const sure = answers.flatMap((answer, k) => {
      const own = chosen[k];
      if (answer.is_close === 1 || own === undefined) return [];
      return [{ told: [answer.pick, answer.verdict, answer.issue], wanted: [own.pick, own.verdict, null] }];
    });
    closeOnes += answers.length - sure.length;
    expect(sure.map(({ told }) => told)).toEqual(sure.map(({ wanted }) => wanted));
    const off = answers.map(({ probability }, k) => {
      const own = chosen[k];
      return Math.abs(
        Number(probability) - (own?.probabilities[plan.sizes.indexOf(own.pick ?? "")] ?? Number.NaN),
      );
    });
    expect(off.filter((one, k) => !(one < 1e-14) && answers[k]?.is_close !== 1)).toEqual([]);
  });

  test("everywhere but where the library itself holds no columns, and for most people", () => {
    expect(refused).toEqual([
      "Thimblewick Darning Egg 60, by torso-length,hip-belt-girth: columns-belts-apart",
      "Thimblewick Darning Egg 60, by hip-belt-girth: chart-not-judged",
    ]);
    // Three people in ten were put on an end or between two of them on purpose.
    expect(closeOnes).toBeLessThan(0.3 * PEOPLE * cases.length);
    expect(closeOnes).toBeGreaterThan(0);
  });
});

describe("a chart of two sizes, by hand", () => {
  const chart = charts.parseChart("# harness: fixed\nsize,torso-length (cm)\nS,38-43\nM,42-48\n", {
    chart: "Doily 45",
  });
  const plan = planOf(chart, ["torso-length"]);
  const table: PeopleTable = {
    people: "members of the crew",
    id: "Member",
    unit: "in",
    columns: { "torso-length": { mean: "back", sd: 'sd of "back"' } },
  };

  async function answersTo(...rows: readonly string[]): Promise<readonly unknown[]> {
    await connection.run(
      'CREATE OR REPLACE TABLE "members of the crew" ("Member" TEXT, back DOUBLE, "sd of ""back""" DOUBLE)',
    );
    await connection.run(`INSERT INTO "members of the crew" VALUES ${rows.join(", ")}`);
    return ask(`SELECT id, pick, verdict, issue FROM (${choicesSql(plan, table)}) ORDER BY id`);
  }

  test("inches are 25.4 mm, and names are put in quotation marks where they have to be", async () => {
    // 17 in are 431.8 mm: 0.08 standard deviations of 10 in above S (430), and known exactly inside M alone.
    // 16.9 in are 429.26 mm: inside both when known exactly; 0.74 mm inside S, 9.26 mm inside M: more room.
    expect(await answersTo("('a', 17, 0)", "('b', 16.9, 0)", "('c', 20, 0)", "('d', 16, 0)")).toEqual([
      { id: "a", pick: "M", verdict: "fits", issue: null },
      { id: "b", pick: "M", verdict: "two-sizes-fit", issue: null },
      // 508 mm lie beyond 480; 406.4 mm are in S alone.
      { id: "c", pick: "M", verdict: "outside-the-range", issue: null },
      { id: "d", pick: "S", verdict: "fits", issue: null },
    ]);
  });

  test("nobody is left out: missing, impossible and repeated people get an issue", async () => {
    expect(
      await answersTo(
        "('a', NULL, 1)",
        "('b', 17, NULL)",
        "('c', -17, 1)",
        "('d', 17, -1)",
        "('e', 'nan', 1)",
        "('f', 17, 'inf')",
        "('g', 17, 1)",
        "('g', 16, 1)",
        "('h', 16, 0)",
      ),
    ).toEqual([
      { id: "a", pick: null, verdict: null, issue: "sql-belief-missing" },
      { id: "b", pick: null, verdict: null, issue: "sql-belief-missing" },
      ...["c", "d", "e", "f"].map((id) => ({ id, pick: null, verdict: null, issue: "sql-belief-invalid" })),
      { id: "g", pick: null, verdict: null, issue: "sql-id-repeated" },
      { id: "h", pick: "S", verdict: "fits", issue: null },
    ]);
  });

  test("a unit that is none is refused", () => {
    const unit = "furlong" as "mm";
    expect(() => choicesSql(plan, { ...table, unit })).toThrow("unit");
  });

  test("a chart that states a length of the back, of whom none is known, has no verdict", async () => {
    const girth = charts.parseChart("size,torso-length (cm),hip-belt-girth (cm)\nS,38-43,70-90\n", {
      chart: "Doily 45",
    });
    const sql = choicesSql(planOf(girth, ["hip-belt-girth"]), {
      people: "girths",
      id: "id",
      unit: "cm",
    });
    await connection.run(
      "CREATE OR REPLACE TABLE girths AS SELECT 1 AS id, 80 AS hip_belt_girth_mean, 1 AS hip_belt_girth_sd",
    );
    expect((await ask(sql)).map(({ pick, verdict }) => [pick, verdict])).toEqual([["S", "measure-again"]]);
  });
});

test("the query uses nothing but standard SQL", () => {
  for (const { chart, read } of cases) {
    const compiled = fit.safeCompileColumns(chart, { read });
    if (!compiled.ok) continue;
    const called = choicesSql(compiled.value, inMm)
      .replaceAll(/'(?:[^']|'')*'/g, "''")
      .matchAll(/\b([A-Z_]+)\s?\(/g);
    const known =
      "ABS AND AS BY CASE COUNT ELSE EXP FIRST_VALUE FLOOR LAG MAX MIN NULLIF OR OVER ROW_NUMBER WHEN".split(
        " ",
      );
    expect(
      [...new Set([...called].map(([, name]) => name ?? ""))].filter((name) => !known.includes(name)),
    ).toEqual([]);
  }
});
