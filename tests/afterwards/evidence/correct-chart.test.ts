import { correctChart, createEvidence } from "@tapewise/afterwards";
import { expect, test } from "vitest";
import { add, gingham, ofM } from "./gingham.ts";

test("without outcomes of the maker the very same chart comes back", () => {
  const evidence = createEvidence();
  add(evidence, { ...ofM, maker: "Marmalade", side: "below", meanMm: 470 }, 50);
  expect(correctChart(gingham, evidence)).toEqual({ chart: gingham, known: [], corrections: [], ranges: [] });
  expect(correctChart(gingham, evidence).chart).toBe(gingham);
});

test("one outcome is known and does not move a range", () => {
  const evidence = createEvidence();
  add(evidence, { ...ofM, side: "below" });
  const corrected = correctChart(gingham, evidence);
  expect(corrected.chart).toBe(gingham);
  expect(corrected.known.map(({ dimension }) => dimension)).toEqual(["torso-length"]);
});

test("many move every size alike; open ends stay open, girths and cells stay as printed", () => {
  const evidence = createEvidence();
  add(evidence, { ...ofM, side: "below" }, 20);
  add(evidence, { ...ofM, meanMm: 490 }, 20);
  const { chart, ranges, corrections } = correctChart(gingham, evidence);
  expect(corrections.map(({ dimension }) => dimension)).toEqual(["torso-length"]);
  const [s, m, l] = chart.sizes.map(({ ranges: own }) => own["torso-length"]?.interval);
  const shift = (l?.from ?? 0) - 480;
  expect(shift).toBeGreaterThan(10);
  // S and M are equally wide: their middles move by the offset and their widths by the same factor.
  expect(((s?.from ?? 0) + (s?.to ?? 0)) / 2).toBeCloseTo(405 + shift, 9);
  expect(((m?.from ?? 0) + (m?.to ?? 0)) / 2).toBeCloseTo(455 + shift, 9);
  expect((m?.to ?? 0) - (m?.from ?? 0)).toBeCloseTo((s?.to ?? 0) - (s?.from ?? 0), 9);
  expect(l?.to).toBe(Number.POSITIVE_INFINITY);
  expect(ranges.map(({ size, dimension }) => [size, dimension])).toEqual(
    ["S", "M", "L"].map((size) => [size, "torso-length"]),
  );
  expect(ranges[2]?.toSdMm).toBe(0);
  expect(ranges[0]?.fromSdMm).toBeGreaterThan(0);
  expect(chart.sizes.map(({ ranges: own }) => own["hip-belt-girth"])).toEqual(
    gingham.sizes.map(({ ranges: own }) => own["hip-belt-girth"]),
  );
  expect(chart.sizes[0]?.ranges["torso-length"]?.stated).toEqual(
    gingham.sizes[0]?.ranges["torso-length"]?.stated,
  );
});
