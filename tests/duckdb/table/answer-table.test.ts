import { existsSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { DuckDBConnection } from "@duckdb/node-api";
import { type AnsweredTable, answerTable } from "@tapewise/duckdb";
import { charts, type outcome } from "tapewise";
import { chooseLine, isChoice } from "tapewise/batch";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { root } from "../../architecture/workspace.ts";
import { demoCharts, openDatabase } from "../sql/library.ts";

const folder = mkdtempSync(join(tmpdir(), "tapewise-duckdb-"));
const file = (name: string) => join(folder, name);
const crew = join(root, "packages/duckdb/demo/crew.csv");
const chart = charts.parseChart("size,torso-length (cm)\nS,38-43\nM,42-48\n", { chart: "Doily 45" });

let connection: DuckDBConnection;
beforeAll(async () => {
  connection = await openDatabase();
});
afterAll(() => {
  connection.closeSync();
  rmSync(folder, { recursive: true });
});

async function rowsOf(path: string): Promise<readonly Record<string, unknown>[]> {
  return (await connection.runAndReadAll(`SELECT * FROM '${path}' ORDER BY ALL`)).getRowObjectsJson();
}

/** Writes a table by a query, and answers it into a Parquet file. */
async function answerQuery(query: string, shelf: readonly charts.SizeChart[] = [chart]) {
  await connection.run(`COPY (${query}) TO '${file("in.parquet")}'`);
  const found = await answerTable({ input: file("in.parquet"), output: file("out.parquet"), charts: shelf });
  return { found, rows: found.ok ? await rowsOf(file("out.parquet")) : [] };
}

function codes({ issues }: outcome.Outcome<AnsweredTable>): readonly string[] {
  return issues.map(({ code }) => code);
}

describe("answerTable", () => {
  test.each(["parquet", "csv"])(
    "gives the crew of the demo, in CSV, the answers of the batch, in %s",
    async (ending) => {
      const output = file(`crew.${ending}`);
      const found = await answerTable({ input: crew, output, charts: demoCharts });
      expect(found).toMatchObject({ ok: true, value: { people: 5, withoutChoice: 1, unreadable: 0 } });
      // Nobody asked for lockers; nothing else is passed over.
      expect(found.issues.map(({ code, received }) => [code, received])).toEqual([
        ["table-column-unknown", "locker"],
      ]);
      const lines = [
        '{"cut":"women","stature":"166 cm","measuredBy":"helper","readings":{"torso-length":["40.3 cm","39.8 cm","40.6 cm"],"hip-belt-girth":["88.5 cm","89 cm"]}}',
        '{"cut":"men","stature":"183 cm","measuredBy":"self","readings":{"torso-length":["46.4 cm","47 cm","46.7 cm"],"hip-belt-girth":["94.6 cm","94 cm"]}}',
        '{"measuredBy":"self","readings":{"torso-length":["42 cm"]}}',
        '{"cut":"women","stature":"170 cm","measuredBy":"self","readings":{"torso-length":["44 in cm"],"hip-belt-girth":["91 cm"]}}',
        '{"measuredBy":"self","readings":{"torso-length":["45.1 cm","45.6 cm","45.2 cm"],"hip-belt-girth":["92 cm"]}}',
      ];
      const wanted = lines.flatMap((line, k): readonly Readonly<Record<string, unknown>>[] => {
        const answer = chooseLine(line, demoCharts);
        const about = { row: `${k + 1}`, id: ["wren", "tobias", "maren", "ada", "lior"][k] };
        const issues = answer.issues?.map(({ code }) => code).join(" ") ?? null;
        if (!isChoice(answer))
          return [{ ...about, chart: null, pick: null, probability: null, belt: null, issues }];
        return answer.choices.map(({ chart: name, pick, probability, belt }) => ({
          ...about,
          chart: name,
          pick,
          probability: `${probability}`,
          belt: belt?.pick ?? null,
          issues,
        }));
      });
      const inOrder = (await connection.runAndReadAll(`SELECT * FROM '${output}'`)).getRowObjectsJson();
      expect(
        inOrder.map(({ row, id, chart: name, pick, probability, belt_pick: belt, issue_codes: issues }) => ({
          row: `${row}`,
          id,
          chart: name,
          pick,
          probability: probability === null ? null : `${probability}`,
          belt,
          issues,
        })),
      ).toEqual(wanted);
    },
  );

  test("tells all of a choice: reasons, misfit of the pick, every size", async () => {
    const { rows } = await answerQuery(`SELECT 17 AS id, [45.0, 45.2] AS "torso-length (cm)"`);
    const answer = chooseLine('{"readings":{"torso-length":["45.0 cm","45.2 cm"]}}', [chart]);
    const [choice] = isChoice(answer) ? answer.choices : [];
    expect(rows).toHaveLength(1);
    const [{ sizes, ...row } = {}] = rows;
    expect(JSON.parse(String(sizes))).toEqual(choice?.sizes);
    expect(row).toEqual({
      row: "1",
      id: 17,
      chart: "Doily 45",
      pick: "M",
      verdict: choice?.verdict,
      probability: choice?.probability,
      expected_misfit_mm: choice?.sizes.find(({ size }) => size === "M")?.expectedMisfitMm,
      belt_pick: null,
      belt_probability: null,
      reasons: choice?.reasons.join(" "),
      issue_codes: null,
      issues: null,
    });
  });

  test("bad cells of any kind give a row with its issues, and the others go on", async () => {
    const { found, rows } = await answerQuery(`SELECT * FROM (VALUES
      (1, 'women', 45.0, 45.5, true),
      (2, 'woman', 45.0, 45.5, true),
      (3, NULL, NULL, NULL, NULL),
      (4, NULL, 'nan'::DOUBLE, 45.5, NULL),
      (5, NULL, -45.0, 45.5, NULL),
      (6, NULL, 45.0, NULL, false)) AS v(id, cut, "torso-length 2 (cm)", "torso-length 1 (cm)", "firstPack")`);
    expect(found).toMatchObject({ ok: true, value: { people: 6, withoutChoice: 4 } });
    expect(rows.map(({ id, pick, issue_codes: issues }) => [id, pick, issues])).toEqual([
      [1, "M", null],
      [2, null, "person-choice-unknown"],
      [3, null, "person-readings-missing"],
      [4, null, "length-not-a-number reading-alone"],
      [5, null, "length-negative reading-alone"],
      [6, "M", "reading-alone"],
    ]);
  });

  test("lines of CSV that are no row are told at the end, with their line and reason", async () => {
    writeFileSync(file("ragged.csv"), 'id,torso-length (cm)\na,45\nb,43,44\nc\n"d,45\n');
    writeFileSync(file("one.csv"), "id,torso-length (cm)\na,45\n");
    const found = await answerTable({
      input: file("ragged.csv"),
      output: file("out.parquet"),
      charts: [chart],
    });
    expect(found).toMatchObject({ ok: true });
    const { people = 0, unreadable = 0 } = found.ok ? found.value : {};
    // Four lines after the first: each is a person or is told of.
    expect(people + unreadable).toBe(4);
    const rows = (
      await connection.runAndReadAll(`SELECT id, issue_codes, issues FROM '${file("out.parquet")}'`)
    ).getRowsJS();
    expect(rows[0]?.[0]).toBe("a");
    const told = rows
      .filter(([, code]) => code === "table-row-unreadable")
      .map(([, , issues]) => JSON.parse(String(issues))[0]);
    expect(told.length).toBe(unreadable);
    expect(told.map(({ facts, received }) => [facts.line, received])).toEqual(
      expect.arrayContaining([
        [3, "b,43,44"],
        [4, "c"],
      ]),
    );
    const csv = await answerTable({ input: file("ragged.csv"), output: file("out.csv"), charts: [chart] });
    expect(csv).toMatchObject({ ok: true, value: { people, unreadable } });
  });

  test("columns that are called otherwise are named", async () => {
    writeFileSync(file("other.csv"), "Member;Back in cm\n00017;44,8\n");
    const columns = { Member: "id", "Back in cm": "torso-length (cm)" };
    const found = await answerTable({
      input: file("other.csv"),
      output: file("out.parquet"),
      charts: [chart],
      columns,
    });
    expect(codes(found)).toEqual([]);
    // An id is what was written: no number is made of it.
    expect((await rowsOf(file("out.parquet"))).map(({ id, pick }) => [id, pick])).toEqual([["00017", "M"]]);
  });

  test("the error of readings may be stated in columns", async () => {
    const { rows } = await answerQuery(
      `SELECT 4.0 AS "biasMm", '6' AS "repeatMm", 0 AS "resolutionMm", 450 AS "torso-length (mm)"
       UNION ALL SELECT NULL, 'six', NULL, 450`,
    );
    const answer = chooseLine(
      '{"error":{"biasMm":4,"repeatMm":6,"resolutionMm":0},"readings":{"torso-length":["450 mm"]}}',
      [chart],
    );
    expect(rows.map(({ probability, issue_codes: issues }) => [probability, issues])).toEqual([
      [isChoice(answer) ? answer.choices[0]?.probability : undefined, "reading-alone"],
      [null, "person-field-missing person-field-invalid person-field-missing"],
    ]);
  });
});

describe("a table that cannot be answered is told of, and nothing is written", () => {
  const call = async (
    input: string,
    columns: Readonly<Record<string, string>> = {},
    output = file("none.parquet"),
  ) => {
    const found = await answerTable({ input, output, charts: [chart], columns });
    expect(found.ok).toBe(false);
    expect(existsSync(file("none.parquet"))).toBe(false);
    expect(readdirSync(folder).filter((name) => name.includes(".part"))).toEqual([]);
    return codes(found);
  };

  test("by its path", async () => {
    expect(await call(file("nowhere.csv"))).toEqual(["file-missing"]);
    expect(await call(crew.replace(".csv", ".ods"))).toEqual(["table-format-unknown"]);
    expect(await call(crew, {}, file("none.xlsx"))).toEqual(["table-format-unknown"]);
    expect(await call(crew, {}, crew)).toEqual(["table-output-is-input"]);
    expect(await call(crew, {}, join(folder, "no/such/folder.csv"))).toEqual(["table-unwritable"]);
    writeFileSync(file("false.parquet"), "id,torso-length (cm)\n");
    expect(await call(file("false.parquet"))).toEqual(["table-unreadable"]);
  });

  test("by its columns", async () => {
    const withHeader = (header: string) => {
      writeFileSync(file("header.csv"), `${header}\n${header.replaceAll(/[^,]+/g, "45")}\n`);
      return file("header.csv");
    };
    expect(await call(withHeader("id,name"))).toEqual(["table-column-unknown", "table-without-readings"]);
    expect(await call(withHeader("id,torso-lenght (cm)"))).toEqual([
      "table-column-misspelt",
      "table-without-readings",
    ]);
    expect(await call(withHeader("id,torso-length (yd),stature (cm)"))).toEqual(["table-column-misspelt"]);
    expect(await call(withHeader("id,torso-length (cm),stature (cm),stature (in)"))).toEqual([
      "table-column-repeated",
    ]);
    expect(await call(crew, { Locker: "id" })).toEqual(["table-column-missing", "table-column-unknown"]);
    expect(await call(crew, { locker: "shoe size" })).toEqual(["table-column-misspelt"]);
  });
});

test("an old file stays until the new one is whole", async () => {
  writeFileSync(file("kept.csv"), "what was here before\n");
  expect(
    (await answerTable({ input: file("nowhere.csv"), output: file("kept.csv"), charts: [chart] })).ok,
  ).toBe(false);
  expect(
    (
      await connection.runAndReadAll(`SELECT * FROM read_csv('${file("kept.csv")}', header = true)`)
    ).columnNames(),
  ).toEqual(["what was here before"]);
});

test("many rows come out in their order", async () => {
  const { found } = await answerQuery(
    `SELECT i AS id, 380 + i % 110 AS "torso-length (mm)" FROM range(30000) AS r(i)`,
  );
  expect(found).toMatchObject({ ok: true, value: { people: 30_000, withoutChoice: 0 } });
  const wrong = `SELECT COUNT(*), COUNT(*) FILTER (WHERE "row" <> id + 1 OR n <> id) FROM (SELECT *, file_row_number AS n FROM read_parquet('${file("out.parquet")}', file_row_number = true))`;
  expect((await connection.runAndReadAll(wrong)).getRowsJS()).toEqual([[30_000n, 0n]]);
});
