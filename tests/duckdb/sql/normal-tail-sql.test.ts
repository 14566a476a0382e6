import { normalTailSql } from "@tapewise/duckdb";
import { statistics } from "tapewise";
import { expect, test } from "vitest";
import { openDatabase } from "./library.ts";

test("agrees with the library within the stated bound, on both sides and far out", async () => {
  const connection = await openDatabase();
  const sql = `SELECT z, ${normalTailSql("z")} AS tail FROM (SELECT (i - 100000) / 10000.0E0 AS z FROM range(200001) AS r(i))`;
  const rows = (await connection.runAndReadAll(sql)).getRowsJS();
  expect(rows.length).toBe(200_001);
  const worst = rows.reduce(
    (most, [z, tail]) =>
      Math.max(most, Math.abs(Number(tail) - statistics.normalUpperTail(Math.abs(Number(z))))),
    0,
  );
  expect(worst).toBeLessThan(1e-15);
});

test("is 0 where nothing is left, and NULL for NULL", async () => {
  const connection = await openDatabase();
  const sql = `SELECT ${normalTailSql("z")} FROM (VALUES (1E300), (-1E300), ('inf'::DOUBLE), (NULL)) AS v(z)`;
  expect((await connection.runAndReadAll(sql)).getRowsJS()).toEqual([[0], [0], [0], [null]]);
});
