import type { fit } from "tapewise";
import { above, below, inside, misfit } from "./held-sql.ts";
import { normalDensitySql, normalTailSql } from "./normal-tail-sql.ts";
import { columnsOf, millimetresIn } from "./people-columns.ts";
import type { PeopleTable } from "./people-table.ts";
import { joinTerms, writeName, writeNumber, writeText } from "./write-sql.ts";

/** A part of a query with its name. */
export type SqlPart = readonly [name: string, query: string];

/** An open end, and one that a size does not state: so far out that nothing is left of any tail. */
const OPEN = 1e300;
/** A length from here on is none of a body; the largest in any unit, so that nothing overflows. */
const TOO_LONG = 1e9;

/** The parts that give probability and expected misfit for every person and size, under the name `tw_fits`. */
export function fitParts(plan: fit.ColumnPlan, table: PeopleTable): readonly SqlPart[] {
  const numbers = plan.dimensions.map((_, dimension) => dimension + 1);
  const sum = (name: string) =>
    joinTerms(
      numbers.map((n) => `${name}${n}`),
      "+",
      "0E0",
    );
  const product = joinTerms(
    numbers.map((n) => `inside${n}`),
    "*",
    "1E0",
  );
  const ofPerson = ["id", "issue", "has_build"];
  const ofSize = ["size_no", "size", "order_no", "length_no", "harness"];
  const each = (write: (n: number) => readonly string[]) => numbers.flatMap(write);
  const cell = [...ofPerson, ...ofSize];
  const ends = each((n) => [`m${n}`, `s${n}`, `from${n}`, `from${n}_in`, `to${n}`, `to${n}_in`]);
  return [
    ["tw_checked", checked(plan, table)],
    ["tw_believed", believed(plan, table)],
    ["tw_sizes", sizes(plan)],
    [
      "tw_scores",
      select(
        [
          ...cell,
          ...ends,
          ...each((n) => [
            `(from${n} - m${n}) / NULLIF(s${n}, 0E0) AS z_from${n}`,
            `(to${n} - m${n}) / NULLIF(s${n}, 0E0) AS z_to${n}`,
          ]),
        ],
        "tw_believed CROSS JOIN tw_sizes",
      ),
    ],
    [
      "tw_tails",
      select(
        [
          ...cell,
          ...ends,
          ...each((n) =>
            [`from${n}`, `to${n}`].flatMap((end) => [
              `z_${end}`,
              `${normalTailSql(`z_${end}`)} AS tail_${end}`,
              `${normalDensitySql(`z_${end}`)} AS density_${end}`,
            ]),
          ),
        ],
        "tw_scores",
      ),
    ],
    [
      "tw_held",
      select(
        [
          ...cell,
          `CASE WHEN m1 - from1 < to1 - m1 THEN m1 - from1 ELSE to1 - m1 END AS room`,
          ...each((n) => [
            `${inside(n)} AS inside${n}`,
            `${misfit(n)} AS misfit${n}`,
            `${below(n)} AS below${n}`,
            `${above(n)} AS above${n}`,
          ]),
        ],
        "tw_tails",
      ),
    ],
    [
      "tw_fits",
      select(
        [
          ...cell,
          `${product} AS probability`,
          `${sum("misfit")} AS expected_misfit_mm`,
          "room",
          ...each((n) => [`below${n}`, `above${n}`]),
        ],
        "tw_held",
      ),
    ],
  ];
}

/** A list of columns from a table. */
export function select(columns: readonly string[], from: string): string {
  return `SELECT\n  ${columns.join(",\n  ")}\nFROM ${from}`;
}

function checked(plan: fit.ColumnPlan, table: PeopleTable): string {
  const columns = columnsOf(plan, table);
  const given = columns.flatMap(({ mean, sd }) => [writeName(mean), writeName(sd)]);
  const sound = columns.map(
    ({ mean, sd }) =>
      `${writeName(mean)} > 0E0 AND ${writeName(mean)} < ${writeNumber(TOO_LONG)} ` +
      `AND ${writeName(sd)} >= 0E0 AND ${writeName(sd)} < ${writeNumber(TOO_LONG)}`,
  );
  const build =
    table.hasBuild === undefined ? "0" : `CASE WHEN ${writeName(table.hasBuild)} = 1 THEN 1 ELSE 0 END`;
  return select(
    [
      `${writeName(table.id)} AS id`,
      ...columns.flatMap(({ mean, sd }, k) => [
        `${writeName(mean)} AS mean${k + 1}`,
        `${writeName(sd)} AS sd${k + 1}`,
      ]),
      `${build} AS has_build`,
      `CASE WHEN ${joinTerms(
        given.map((one) => `${one} IS NULL`),
        "OR",
        "1 = 0",
      )} THEN 'sql-belief-missing'\n` +
        `    WHEN ${sound.join(" AND ")} THEN NULL\n    ELSE 'sql-belief-invalid' END AS issue`,
    ],
    writeName(table.people),
  );
}

function believed(plan: fit.ColumnPlan, { unit }: PeopleTable): string {
  const factor = writeNumber(millimetresIn(unit));
  const inMm = (column: string) => `CASE WHEN issue IS NULL THEN ${column} * ${factor} END`;
  return select(
    [
      "id",
      "issue",
      "has_build",
      ...plan.dimensions.flatMap((_, k) => [
        `${inMm(`mean${k + 1}`)} AS m${k + 1}`,
        `${inMm(`sd${k + 1}`)} AS s${k + 1}`,
      ]),
    ],
    "tw_checked",
  );
}

function sizes(plan: fit.ColumnPlan): string {
  const { intervals, order, length, harness } = plan.tables;
  const count = plan.dimensions.length;
  const end = (value: number | undefined, open: number) =>
    writeNumber(value === undefined || !Number.isFinite(value) ? open : value);
  return plan.sizes
    .map((name, k) => {
      const ranges = plan.dimensions.flatMap((_, dimension) => {
        const range = intervals[k * count + dimension];
        const n = dimension + 1;
        return [
          `${end(range?.from, -OPEN)} AS from${n}`,
          `${Number(range?.fromClosed !== false)} AS from${n}_in`,
          `${end(range?.to, OPEN)} AS to${n}`,
          `${Number(range?.toClosed !== false)} AS to${n}_in`,
        ];
      });
      const facts = [`${order[k]} AS order_no`, `${length[k]} AS length_no`, `${harness[k]} AS harness`];
      return `SELECT ${[`${k + 1} AS size_no`, `${writeText(name)} AS size`, ...facts, ...ranges].join(", ")}`;
    })
    .join("\nUNION ALL\n");
}
