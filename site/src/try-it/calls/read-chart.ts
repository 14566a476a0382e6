import { charts, intervals, outcome } from "tapewise";

/** A chart as it is understood, with all that is wrong with it or odd about it. Lengths in mm. */
export function readChart(text: string) {
  const read = charts.safeParseChart(text, { chart: "Doily 45" });
  if (!read.ok) return read;
  const sizes = read.value.sizes.map(({ name, ranges }) => ({
    size: name,
    ranges: Object.entries(ranges).map(
      ([dimension, range]) => `${dimension} ${intervals.formatInterval(range.interval)}, ${range.basis}`,
    ),
  }));
  return outcome.success(sizes, [...read.issues, ...charts.auditChart(read.value)]);
}
