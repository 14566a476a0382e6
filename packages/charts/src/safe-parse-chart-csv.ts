import type { Outcome } from "@tapewise/outcome";
import type { ChartOptions } from "./chart-options.ts";
import { finishChart } from "./finish-chart.ts";
import { guardText } from "./guard-text.ts";
import { readCsvChart } from "./read-csv-chart.ts";
import type { SizeChart } from "./size-chart.ts";

/**
 * Reads a size chart as people keep it in a spreadsheet, or copy it from a page: comma, semicolon or tab
 * separated, one line for each size, the sizes' names in the first column.
 *
 * A header names the dimension and its unit (`torso-length (cm)`, `Torso, in`, `Back length cm`), or
 * `capacity (L)`, `mass (kg)`, `harness`. A cell is a range (`38-43`, `15 1/2 to 17`), one nominal length
 * (`46`), an open end (`<104`, `48+`), or nothing (`-`, `n/a`). A column in inches and one in centimetres may
 * state one dimension; the first counts and the second is checked against it. Lines such as `# maker: …`,
 * `# cut: women`, `# harness: fixed` and `# swappable: hip-belt` tell of the whole chart. After a blank line a
 * second table, whose first header is `belt`, holds hip belts that are sized separately.
 *
 * Everything that can be read is kept. Issues carry line and column. There is no value when there is no
 * size with a name, or no dimension that can be read.
 *
 * Issue codes: `chart-empty`, `chart-too-large`, `chart-not-text`, `chart-csv-…`, `chart-column-…`,
 * `chart-row-ragged`, `chart-hip-unstated`, `chart-key-unknown`, `chart-key-repeated`,
 * `chart-word-unknown`, `chart-text-too-long`, `chart-unnamed`, `chart-no-sizes`, `chart-no-dimension`,
 * `chart-too-many-sizes`, `chart-size-unnamed`, `chart-size-repeated`, `chart-quantity-unreadable`,
 * `chart-cell-…`, `chart-range-reversed`, `chart-nominal-alone`, `chart-statements-…`, and `length-…` of
 * @tapewise/units.
 *
 * @throws {@link InvalidArgumentError} when `loneNominalHalfWidth` is not above zero and finite.
 *
 * @example
 * ```ts
 * import { safeParseChartCsv } from "@tapewise/charts";
 * const outcome = safeParseChartCsv("size,torso-length (cm)\nS,38-43\nM,46\nL,48+", { chart: "Crew pack 40" });
 * outcome.ok && outcome.value.sizes.map((size) => size.name); // => ["S", "M", "L"]
 * outcome.ok && outcome.value.sizes[1]?.ranges["torso-length"]?.interval; // => { from: 430, to: 480, fromClosed: true, toClosed: true }
 * ```
 */
export function safeParseChartCsv(text: string, options: ChartOptions = {}): Outcome<SizeChart> {
  const guarded = guardText(text, options.file);
  return guarded.ok ? finishChart(readCsvChart(guarded.value, options.file), options) : guarded;
}
