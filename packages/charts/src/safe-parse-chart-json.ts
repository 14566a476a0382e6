import { failure, type Outcome } from "@tapewise/outcome";
import { placesIn } from "@tapewise/tables";
import { chartIssue } from "./chart-issue.ts";
import type { ChartOptions } from "./chart-options.ts";
import { DEEPEST_JSON } from "./data.ts";
import { finishChart } from "./finish-chart.ts";
import { guardText } from "./guard-text.ts";
import { readJsonChart } from "./read-json-chart.ts";
import type { SizeChart } from "./size-chart.ts";
import { sourceOfJson } from "./source-of-json.ts";

/**
 * Reads a size chart from its JSON form. A range is text as in a cell (`"38-43 cm"`), or an object with
 * `from`, `to` or `nominal`, each a length with its unit; `also` holds the same range in another unit.
 *
 * Everything that can be read is kept. Issues carry the line and column in the text and the path in the
 * chart. There is no value when the text is no JSON, has no size with a name, or states no dimension.
 *
 * Issue codes: `chart-empty`, `chart-too-large`, `chart-not-text`, `chart-json-syntax`,
 * `chart-json-unfinished`, `chart-json-too-deep`, `chart-value-kind`, `chart-key-unknown`,
 * `chart-key-repeated`, `chart-word-unknown`, `chart-text-blank`, `chart-text-too-long`, `chart-unnamed`, `chart-no-sizes`,
 * `chart-no-dimension`, `chart-too-many-sizes`, `chart-size-unnamed`, `chart-size-repeated`,
 * `chart-quantity-unreadable`, `chart-cell-…`, `chart-range-…`, `chart-nominal-…`, `chart-statements-…`,
 * and `length-…` of @tapewise/units.
 *
 * @throws {@link InvalidArgumentError} when `loneNominalHalfWidth` is not above zero and finite.
 *
 * @example
 * ```ts
 * import { safeParseChartJson } from "@tapewise/charts";
 * const text = '{"chart": "Crew pack 40", "sizes": [{"size": "M", "torso-length": {"from": "43 cm", "to": "48 cm"}}]}';
 * const outcome = safeParseChartJson(text);
 * outcome.ok && outcome.value.sizes[0]?.ranges["torso-length"]?.interval.to; // => 480
 * ```
 */
export function safeParseChartJson(text: string, options: ChartOptions = {}): Outcome<SizeChart> {
  const guarded = guardText(text, options.file);
  if (!guarded.ok) return guarded;
  const placeAt = placesIn(guarded.value, options.file);
  const reading = sourceOfJson(guarded.value, DEEPEST_JSON, placeAt);
  if ("source" in reading) return finishChart(readJsonChart(reading.source), options);
  const { kind, offset } = reading.fault;
  const received = guarded.value.slice(offset, offset + 20);
  return failure([
    chartIssue(`chart-json-${kind}`, { place: placeAt(offset), received, facts: { limit: DEEPEST_JSON } }),
  ]);
}
