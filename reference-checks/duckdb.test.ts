import { DuckDBInstance } from "@duckdb/node-api";
import { normalTailSql } from "@tapewise/duckdb";
import { expect, test } from "vitest";

/** P(Z > z): recomputed with mpmath 1.3.0 to 40 digits as erfc(z/√2)/2, and rounded to a double. */
const TAILS: readonly (readonly [z: number, tail: number])[] = [
  [0, 0.5],
  [0.1, 0.460172162722971],
  [0.5, 0.3085375387259869],
  [1, 0.15865525393145705],
  [1.5, 0.06680720126885807],
  [1.959963984540054, 0.025000000000000012],
  [2.5, 0.006209665325776135],
  [4, 3.1671241833119924e-5],
  [6, 9.86587645037698e-10],
  [7, 1.279812543885835e-12],
  [7.5, 3.1908916729108963e-14],
  [8, 6.220960574271784e-16],
  [8.9, 2.7923343749396464e-19],
];

test.each(TAILS)("the normal tail in SQL at %d", async (z, tail) => {
  const connection = await (await DuckDBInstance.create(":memory:")).connect();
  const sql = `SELECT ${normalTailSql("z")} FROM (VALUES (${z}::DOUBLE), (${-z}::DOUBLE)) AS v(z)`;
  for (const [found] of (await connection.runAndReadAll(sql)).getRowsJS()) {
    expect(Math.abs(Number(found) - tail)).toBeLessThan(1e-15);
  }
});
