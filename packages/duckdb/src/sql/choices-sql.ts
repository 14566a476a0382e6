import type { fit } from "tapewise";
import { endsOf, isCloseToNext, isCloseToOther, placesOf, SURE } from "./close-sql.ts";
import { fitParts, type SqlPart, select } from "./fit-parts.ts";
import type { PeopleTable } from "./people-table.ts";
import { joinTerms, writeNumber, writeWith } from "./write-sql.ts";

/**
 * A query of standard SQL that picks a size for every person of a table: one row a person, with `id`, `pick`,
 * `verdict`, `probability` and `expected_misfit_mm` of the pick, `is_close` and `issue`.
 *
 * The rules are those of `chooseColumns` for normal beliefs that no further look is thought of: the order of sizes by
 * probability, expected misfit, room and ranges; ties of build and harness; the verdict before further readings. What
 * stays with the library: Student's t, a prior that binds dimensions together, hip belts that are picked by themselves,
 * questions about readings, and "measure again".
 *
 * `is_close` is 1 where a decision hangs on the last digits of a figure, so that the library may settle it the other
 * way. Nobody is left out: a person without a choice has an `issue`, `sql-belief-missing`, `sql-belief-invalid` or
 * `sql-id-repeated`, for two people of one `id` cannot be told apart.
 *
 * @throws {@link InvalidArgumentError} for a unit that is none.
 *
 * @example
 * ```ts
 * import { choicesSql } from "@tapewise/duckdb";
 * import { charts, fit, outcome } from "tapewise";
 * const chart = charts.parseChart("size,torso-length (cm)\nS,38-43\nM,42-48\n", { chart: "Doily 45" });
 * const plan = outcome.unwrap(fit.safeCompileColumns(chart, { read: ["torso-length"] }));
 * const sql = choicesSql(plan, {
 *   people: "members",
 *   id: "member",
 *   unit: "cm",
 *   columns: { "torso-length": { mean: "back", sd: "back_sd" } },
 * });
 * sql.startsWith("WITH tw_checked AS (\n  SELECT\n    member AS id,\n    back AS mean1"); // => true
 * ```
 */
export function choicesSql(plan: fit.ColumnPlan, table: PeopleTable): string {
  return `${writeWith([...fitParts(plan, table), ...choiceParts(plan)])}\n${answer(plan)}`;
}

const ORDER = "standing DESC, misfit_steps, fit_steps DESC, room_steps DESC, order_no";
const IN_ORDER = `OVER (PARTITION BY id ORDER BY ${ORDER})`;

function choiceParts(plan: fit.ColumnPlan): readonly SqlPart[] {
  const { fitProbability, tieLoss, hopelessProbability } = plan.policy;
  const ends = endsOf(plan);
  const carried = ["id", "issue", "has_build", "size_no", "size", "length_no", "harness"];
  const figures = ["probability", "expected_misfit_mm", ...ends];
  const fitting = writeNumber(fitProbability);
  const count = plan.sizes.length;
  const ofPlace = (column: string, place: number) =>
    `MAX(CASE WHEN place = ${place} THEN ${column} END) AS ${column}${place}`;
  return [
    [
      "tw_stepped",
      select(
        [
          ...carried,
          ...figures,
          "order_no",
          `CASE WHEN probability < ${writeNumber(hopelessProbability)} THEN 0E0 ELSE ${steps("probability", 1e9)} END AS standing`,
          `${steps("expected_misfit_mm", 1e9)} AS misfit_steps`,
          `${steps("probability", 1e9)} AS fit_steps`,
          `${steps("room", 1e6)} AS room_steps`,
        ],
        "tw_fits",
      ),
    ],
    [
      "tw_placed",
      select(
        [
          ...carried,
          ...figures,
          `ROW_NUMBER() ${IN_ORDER} AS place`,
          `LAG(probability) ${IN_ORDER} AS next_probability`,
          `LAG(expected_misfit_mm) ${IN_ORDER} AS next_misfit`,
          `FIRST_VALUE(probability) ${IN_ORDER} AS best_probability`,
        ],
        "tw_stepped",
      ),
    ],
    [
      "tw_tied",
      select(
        [
          ...carried,
          ...figures,
          "place",
          `${isCloseToNext(plan)} AS is_near`,
          `CASE WHEN best_probability >= ${fitting} AND probability >= ${fitting} ` +
            `AND probability >= best_probability - ${writeNumber(tieLoss)} THEN 1 ELSE 0 END AS is_tied`,
        ],
        "tw_placed",
      ),
    ],
    [
      "tw_people",
      `${select(
        [
          "id",
          "COUNT(*) AS cells",
          "MAX(issue) AS issue",
          "MAX(has_build) AS has_build",
          "MAX(is_near) AS is_near",
          "MAX(CASE WHEN is_tied = 1 THEN length_no END) AS longest",
          "MIN(CASE WHEN is_tied = 1 THEN length_no END) AS shortest",
          // The longest that fits about as well, and among the equally long the one that stands first.
          `MAX(CASE WHEN is_tied = 1 THEN length_no * ${count} + ${count} - place END) AS longest_first`,
          "MIN(CASE WHEN is_tied = 1 AND harness = 2 THEN place END) AS adjustable_place",
          "MAX(CASE WHEN place = 1 THEN harness END) AS best_harness",
          ...ends.map((end) => `MIN(${end}) AS least_${end}`),
          ...placesOf(plan).flatMap((place) =>
            ["size", "probability", "expected_misfit_mm"].map((column) => ofPlace(column, place)),
          ),
        ],
        "tw_tied",
      )}\nGROUP BY id`,
    ],
    ["tw_settled", select(["tw_people.*", `${pickPlace(plan)} AS pick_place`], "tw_people")],
    [
      "tw_picked",
      select(
        [
          "tw_settled.*",
          ...["size", "probability", "expected_misfit_mm"].map(
            (column) =>
              `CASE pick_place ${placesOf(plan)
                .map((place) => `WHEN ${place} THEN ${column}${place}`)
                .join(" ")} END AS pick_${column}`,
          ),
        ],
        "tw_settled",
      ),
    ],
  ];
}

/** Whole steps of a figure, as the library rounds them before it compares. */
function steps(column: string, perUnit: number): string {
  return `FLOOR(${column} * ${writeNumber(perUnit)} + 5E-1)`;
}

/** Build before harness: the longest of those that fit about as well, else the first that can be adjusted. */
function pickPlace(plan: fit.ColumnPlan): string {
  const count = plan.sizes.length;
  const byBuild = plan.tables.setsLength ? "has_build = 1 AND longest > shortest" : "1 = 0";
  return (
    `CASE WHEN ${byBuild} THEN longest * ${count} + ${count} - longest_first\n` +
    `    WHEN best_harness = 1 AND adjustable_place IS NOT NULL THEN adjustable_place ELSE 1 END`
  );
}

function answer(plan: fit.ColumnPlan): string {
  const isSound = `issue IS NULL AND cells = ${plan.sizes.length}`;
  const where = (column: string, name: string) => `CASE WHEN ${isSound} THEN ${column} END AS ${name}`;
  return select(
    [
      "id",
      where("pick_size", "pick"),
      where(verdict(plan), "verdict"),
      where("pick_probability", "probability"),
      where("pick_expected_misfit_mm", "expected_misfit_mm"),
      where(isCloseToOther(plan), "is_close"),
      `CASE WHEN cells <> ${plan.sizes.length} THEN 'sql-id-repeated' ELSE issue END AS issue`,
    ],
    "tw_picked",
  );
}

/** What the probabilities amount to before further readings are thought of. */
function verdict(plan: fit.ColumnPlan): string {
  const { fitProbability, tieLoss } = plan.policy;
  if (plan.tables.lacksLength) return "'measure-again'";
  const fitting = writeNumber(fitProbability);
  const anyOther = (goesWithPick: ">" | "<=", limit: string) =>
    joinTerms(
      placesOf(plan).map(
        (place) =>
          `(pick_place <> ${place} AND probability${place} + pick_probability ${goesWithPick} ${SURE} ` +
          `AND probability${place} >= ${limit})`,
      ),
      "OR",
      "1 = 0",
    );
  const isOutside = joinTerms(
    endsOf(plan).map((end) => `least_${end} >= ${fitting}`),
    "OR",
    "1 = 0",
  );
  return (
    `CASE WHEN pick_probability < ${fitting} THEN CASE WHEN ${isOutside} THEN 'outside-the-range' ELSE 'between-sizes' END\n` +
    `    WHEN ${anyOther(">", fitting)} THEN 'two-sizes-fit'\n` +
    `    WHEN ${anyOther("<=", `pick_probability - ${writeNumber(tieLoss)}`)} THEN 'between-sizes'\n` +
    "    ELSE 'fits' END"
  );
}
