import { sizeFitsSql } from "@tapewise/duckdb";
import { charts, fit, outcome } from "tapewise";
import { expect, test } from "vitest";
import { chooseByLibrary, demoCharts, fillPeople, inventRows, openDatabase } from "./library.ts";

test.each(demoCharts.map((chart) => [chart.chart, chart] as const))(
  "every size of %s fits as the library says, within the stated bounds",
  async (_, chart) => {
    const connection = await openDatabase();
    // The belts of one chart are picked by themselves, which columns do not hold.
    const girths = chart.belts.length > 0 ? [] : (["hip-belt-girth"] as const);
    const plan = outcome.unwrap(fit.safeCompileColumns(chart, { read: ["torso-length", ...girths] }));
    const rows = inventRows(plan, 1500, 2);
    await fillPeople(connection, plan, rows);
    const sql = sizeFitsSql(plan, { people: "people", id: "id", unit: "mm" });
    const cells = (
      await connection.runAndReadAll(`SELECT * FROM (${sql}) ORDER BY id, size_no`)
    ).getRowObjectsJS();
    const wanted = chooseByLibrary(plan, rows).flatMap(({ probabilities, misfits }, id) =>
      plan.sizes.map((size, k) => ({
        id,
        size_no: k + 1,
        size,
        probability: probabilities[k],
        misfit: misfits[k],
      })),
    );
    expect(cells.map(({ id, size_no, size }) => [id, size_no, size])).toEqual(
      wanted.map(({ id, size_no, size }) => [id, size_no, size]),
    );
    const off = cells.filter(
      ({ probability, expected_misfit_mm: misfit }, k) =>
        !(Math.abs(Number(probability) - (wanted[k]?.probability ?? Number.NaN)) < 1e-14) ||
        !(Math.abs(Number(misfit) - (wanted[k]?.misfit ?? Number.NaN)) < 1e-11),
    );
    expect(off).toEqual([]);
  },
);

test("a person whose figures are missing has rows with an issue and without figures", async () => {
  const connection = await openDatabase();
  const chart = charts.parseChart("size,torso-length (cm)\nS,38-43\nM's,42-48\n", { chart: "Doily 45" });
  const plan = outcome.unwrap(fit.safeCompileColumns(chart, { read: ["torso-length"] }));
  await connection.run(
    "CREATE TABLE people AS SELECT 7 AS id, NULL::DOUBLE AS torso_length_mean, 1 AS torso_length_sd",
  );
  const sql = sizeFitsSql(plan, { people: "people", id: "id", unit: "cm" });
  expect((await connection.runAndReadAll(`${sql} ORDER BY size_no`)).getRowObjectsJS()).toEqual(
    ["S", "M's"].map((size, k) => ({
      id: 7,
      size_no: k + 1,
      size,
      probability: null,
      expected_misfit_mm: null,
      issue: "sql-belief-missing",
    })),
  );
});
