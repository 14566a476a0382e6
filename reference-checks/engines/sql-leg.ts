import { type DuckDBConnection, DuckDBInstance } from "@duckdb/node-api";
import { choicesSql, type PeopleTable } from "@tapewise/duckdb";
import type { fit } from "tapewise";
import { ERROR } from "./people.ts";

/** Where the query finds what is believed of the people. */
const table: PeopleTable = {
  people: "people",
  id: "id",
  unit: "mm",
  columns: {
    "torso-length": { mean: "torso", sd: "torso_sd" },
    "hip-belt-girth": { mean: "girth", sd: "girth_sd" },
  },
};

/** How the choices of the query differ from those of the batch. */
export interface Differences {
  readonly people: number;
  readonly missing: number;
  readonly otherPicks: number;
  readonly otherPicksOfSureOnes: number;
  readonly farthestProbability: number;
  readonly close: number;
  readonly askedAgain: number;
  readonly otherVerdicts: number;
}

/** A database on disk, so that memory stays flat. */
export async function openDatabase(file: string): Promise<DuckDBConnection> {
  return (await DuckDBInstance.create(file)).connect();
}

/** Reads the people, forms what is believed of them, and chooses, all in SQL; gives the seconds it took. */
export async function answerBySql(
  connection: DuckDBConnection,
  plan: fit.ColumnPlan,
  people: string,
): Promise<number> {
  const start = performance.now();
  // The mean of the readings, and the error that lasts beside the one that averages out: u² = bias² + repeat²/n.
  const mean = (name: string) =>
    `list_avg(list_transform(readings."${name}", lambda x: CAST(replace(x, ' mm', '') AS DOUBLE)))`;
  const sd = (name: string) =>
    `sqrt(${ERROR.biasMm ** 2}.0e0 + ${ERROR.repeatMm ** 2}.0e0 / len(readings."${name}"))`;
  await connection.run(
    `CREATE TABLE people AS SELECT id, ${mean("torso-length")} AS torso, ${sd("torso-length")} AS torso_sd,
      ${mean("hip-belt-girth")} AS girth, ${sd("hip-belt-girth")} AS girth_sd
    FROM read_ndjson('${people}', columns = {id: 'VARCHAR',
      readings: 'STRUCT("torso-length" VARCHAR[], "hip-belt-girth" VARCHAR[])'})`,
  );
  await connection.run(`CREATE TABLE choices AS ${choicesSql(plan, table)}`);
  return (performance.now() - start) / 1000;
}

/** Holds the choices of the query against those of the batch. */
export async function compareChoices(connection: DuckDBConnection, answers: string): Promise<Differences> {
  const sql = `SELECT COUNT(*) AS people,
      COUNT(*) FILTER (WHERE c.id IS NULL OR c.pick IS NULL) AS missing,
      COUNT(*) FILTER (WHERE c.pick <> b.pick) AS otherPicks,
      COUNT(*) FILTER (WHERE c.pick <> b.pick AND c.is_close = 0) AS otherPicksOfSureOnes,
      MAX(CASE WHEN c.pick = b.pick THEN ABS(c.probability - b.probability) END) AS farthestProbability,
      COUNT(*) FILTER (WHERE c.is_close = 1) AS close,
      COUNT(*) FILTER (WHERE b.verdict = 'measure-again') AS askedAgain,
      COUNT(*) FILTER (WHERE b.verdict <> 'measure-again' AND b.verdict <> c.verdict) AS otherVerdicts
    FROM (SELECT id, choices[1].pick AS pick, choices[1].verdict AS verdict, choices[1].probability AS probability
      FROM read_ndjson('${answers}', columns = {id: 'VARCHAR',
        choices: 'STRUCT(pick VARCHAR, verdict VARCHAR, probability DOUBLE)[]'})) AS b
    LEFT JOIN choices AS c ON c.id = b.id`;
  const [row = {}] = (await connection.runAndReadAll(sql)).getRowObjectsJS();
  const at = (name: string): number => Number(row[name]);
  return {
    people: at("people"),
    missing: at("missing"),
    otherPicks: at("otherPicks"),
    otherPicksOfSureOnes: at("otherPicksOfSureOnes"),
    farthestProbability: at("farthestProbability"),
    close: at("close"),
    askedAgain: at("askedAgain"),
    otherVerdicts: at("otherVerdicts"),
  };
}

/** The same query in another engine, for the first people: how many get another pick or verdict there. */
export async function differencesInSqlite(
  connection: DuckDBConnection,
  plan: fit.ColumnPlan,
  count: number,
): Promise<number> {
  // From Node 22.13 on.
  const { DatabaseSync } = await import("node:sqlite");
  const sqlite = new DatabaseSync(":memory:");
  sqlite.exec("CREATE TABLE people (id TEXT, torso REAL, torso_sd REAL, girth REAL, girth_sd REAL)");
  const insert = sqlite.prepare("INSERT INTO people VALUES (?, ?, ?, ?, ?)");
  const people = await connection.runAndReadAll(
    `SELECT p.id, torso, torso_sd, girth, girth_sd, pick, verdict FROM people p JOIN choices c ON c.id = p.id LIMIT ${count}`,
  );
  const wanted = new Map<unknown, string>();
  for (const [id, torso, torsoSd, girth, girthSd, pick, verdict] of people.getRowsJS()) {
    insert.run(String(id), Number(torso), Number(torsoSd), Number(girth), Number(girthSd));
    wanted.set(id, `${pick} ${verdict}`);
  }
  const found = sqlite.prepare(choicesSql(plan, table)).all();
  if (found.length !== wanted.size)
    throw new Error(`SQLite gave ${found.length} rows for ${wanted.size} people`);
  return found.filter(({ id, pick, verdict }) => wanted.get(id) !== `${pick} ${verdict}`).length;
}
