import { safeParseChartJson } from "@tapewise/charts";
import { describe, expect, test } from "vitest";
import { bounds, codes, failureOf, places, read } from "./charts-in-tests.ts";

const json = (data: unknown): string => JSON.stringify(data);
const oneSize = (size: object): string =>
  json({ chart: "c", sizes: [{ size: "M", "torso-length": "43-48 cm", ...size }] });

describe("the JSON form", () => {
  const { chart, issues } = read(`{
  "chart": "Thimblewick Doily 45", "maker": "Thimblewick", "product": "Doily 45", "cut": "women",
  "harness": "adjustable", "swappable": ["hip-belt"],
  "sizes": [
    {"size": "S", "torso-length": {"from": "38 cm", "to": "43 cm"}, "hip-belt-girth": {"to": "98 cm"}, "capacityLitres": 43},
    {"size": "M", "torso-length": {"nominal": "46 cm"}, "massGrams": 1400, "harness": "fixed"},
    {"size": "L/XL", "torso-length": "48 cm and up", "hip-belt-girth": {"from": "80 cm", "also": {"from": "31 1/2 in"}}}
  ],
  "belts": [{"belt": "M", "hip-belt-girth": {"from": "80 cm", "to": "95 cm"}}]
}`);

  test("is read whole", () => {
    expect(issues).toEqual([]);
    expect(chart).toMatchObject({
      chart: "Thimblewick Doily 45",
      maker: "Thimblewick",
      product: "Doily 45",
      cut: "women",
      harness: "adjustable",
      swappable: ["hip-belt"],
    });
    expect(bounds(chart)).toEqual({ S: [380, 430], M: [430, 480], "L/XL": [480, Number.POSITIVE_INFINITY] });
    expect(chart.sizes.map((size) => size.covers)).toEqual([["S"], ["M"], ["L", "XL"]]);
    expect(chart.sizes[0]?.capacityLitres).toBe(43);
    expect(chart.sizes[1]).toMatchObject({ massGrams: 1400, harness: "fixed" });
    expect(chart.belts[0]?.ranges["hip-belt-girth"]?.interval).toMatchObject({ from: 800, to: 950 });
  });

  test("keeps what was stated", () => {
    expect(chart.sizes[0]?.ranges["hip-belt-girth"]?.stated).toEqual(["up to 98 cm"]);
    expect(chart.sizes[2]?.ranges["hip-belt-girth"]?.stated).toEqual(["from 80 cm", "from 31 1/2 in"]);
  });

  test("states a nominal length with its range", () => {
    const range = read(oneSize({ "torso-length": { nominal: "46 cm", from: "44 cm", to: "49 cm" } })).chart
      .sizes[0]?.ranges["torso-length"];
    expect(range).toMatchObject({ basis: "nominal", nominalMm: 460, interval: { from: 440, to: 490 } });
  });

  test("names the sizes that a name does not tell", () => {
    expect(read(oneSize({ covers: ["S", "M"] })).chart.sizes[0]?.covers).toEqual(["S", "M"]);
  });

  test("allows a byte order mark, any line ends and space before it", () => {
    const text = `\uFEFF\r\n ${oneSize({}).replaceAll(",", ",\r\n")}`;
    expect(bounds(read(text).chart)).toEqual({ M: [430, 480] });
  });
});

describe("a part that cannot be read", () => {
  test.each([
    [{ "torso-length": { from: 38, to: "43 cm" } }, "chart-value-kind", "sizes[0].torso-length.from"],
    [{ "torso-length": { from: "38", to: "43 cm" } }, "length-no-unit", "sizes[0].torso-length.from"],
    [{ "torso-length": { from: "43 cm", to: "38 cm" } }, "chart-range-reversed", "sizes[0].torso-length"],
    [{ "torso-length": {} }, "chart-range-empty", "sizes[0].torso-length"],
    [{ "torso-length": { nominal: "50 cm", to: "48 cm" } }, "chart-nominal-outside", "sizes[0].torso-length"],
    [
      { "torso-length": { nominal: "30 cm", from: "40 cm" } },
      "chart-nominal-outside",
      "sizes[0].torso-length",
    ],
    [{ "torso-length": null }, "chart-value-kind", "sizes[0].torso-length"],
    [{ "torso-length": ["38 cm"] }, "chart-value-kind", "sizes[0].torso-length"],
    [{ "torso-length": "43-38 cm" }, "chart-range-reversed", "sizes[0].torso-length"],
    [{ "torso-length": { from: "38 cm", too: "43 cm" } }, "chart-key-unknown", "sizes[0].torso-length.too"],
    [
      { "hip-girth": { from: "90 cm", also: { also: "x" } } },
      "chart-key-unknown",
      "sizes[0].hip-girth.also.also",
    ],
    [{ "torso-lenght": "38 cm" }, "chart-key-unknown", "sizes[0].torso-lenght"],
    [{ hip: "80-90 cm" }, "chart-key-unknown", "sizes[0].hip"],
    [{ capacityLitres: "43" }, "chart-quantity-unreadable", "sizes[0].capacityLitres"],
    [{ capacityLitres: 0 }, "chart-quantity-unreadable", "sizes[0].capacityLitres"],
    [{ massGrams: -1 }, "chart-quantity-unreadable", "sizes[0].massGrams"],
    [{ harness: "rigid" }, "chart-word-unknown", "sizes[0].harness"],
    [{ covers: "S" }, "chart-value-kind", "sizes[0].covers"],
    [{ covers: [1] }, "chart-value-kind", "sizes[0].covers[0]"],
    [{ size: 5 }, "chart-value-kind", "sizes[0].size"],
    [{ size: "" }, "chart-size-unnamed", "sizes[0]"],
    [{ size: "\u200B" }, "chart-size-unnamed", "sizes[0]"],
    [{ size: "\u200B" }, "chart-text-blank", "sizes[0].size"],
    [{ size: "x".repeat(201) }, "chart-text-too-long", "sizes[0].size"],
  ])("%j", (size, code, path) => {
    const text = json({
      chart: "c",
      sizes: [
        { size: "M", ...size },
        { size: "L", "torso-length": "48-53 cm" },
      ],
    });
    const { chart, issues } = read(text);
    expect(bounds(chart)).toHaveProperty("L", [480, 530]);
    const found = issues.find((issue) => issue.code === code);
    expect(
      found?.path
        .map((step) => (typeof step === "number" ? `[${step}]` : `.${step}`))
        .join("")
        .slice(1),
    ).toBe(path);
    expect(found?.place?.line).toBe(1);
  });

  test("a reversed range is shown with its ends, also beside a nominal length", () => {
    const { issues } = safeParseChartJson(
      oneSize({ "torso-length": { from: "43 cm", to: "38 cm", nominal: "60 cm" } }),
    );
    expect(issues.find(({ code }) => code === "chart-range-reversed")?.message).toBe(
      "the range 43 cm to 38 cm begins above its end",
    );
  });

  test("half of a range does not pass for an open end", () => {
    const { chart } = read(oneSize({ "hip-belt-girth": { from: "70 cm", to: "90" } }));
    expect(chart.sizes[0]?.ranges).not.toHaveProperty("hip-belt-girth");
  });

  test.each([
    [{ cut: "ladies" }, "chart-word-unknown"],
    [{ cut: 1 }, "chart-value-kind"],
    [{ harness: "fixd" }, "chart-word-unknown"],
    [{ swappable: "hip-belt" }, "chart-value-kind"],
    [{ swappable: ["belt", 3] }, "chart-word-unknown"],
    [{ maker: {} }, "chart-value-kind"],
    [{ belts: {} }, "chart-value-kind"],
    [{ belts: [{ belt: "S", capacityLitres: 3 }] }, "chart-key-unknown"],
    [{ brand: "x" }, "chart-key-unknown"],
    [{ chart: "" }, "chart-unnamed"],
  ])("of the chart: %j", (about, code) => {
    const outcome = safeParseChartJson(
      json({ chart: "c", sizes: [{ size: "M", "torso-length": "43-48 cm" }], ...about }),
    );
    expect(outcome.ok).toBe(true);
    expect(codes(outcome.issues)).toContain(code);
  });

  test("repeated keys: the first counts", () => {
    const { chart, issues } = read(
      '{"chart":"a","chart":"b","sizes":[{"size":"M","size":"L","torso-length":"43-48 cm",\n"torso-length":"1-2 cm"}]}',
    );
    expect(chart.chart).toBe("a");
    expect(bounds(chart)).toEqual({ M: [430, 480] });
    expect(places(issues)).toEqual([
      "chart-key-repeated 1:14",
      "chart-key-repeated 1:47",
      "chart-key-repeated 2:1",
    ]);
  });

  test("keys of the language's own are keys like any other", () => {
    const text =
      '{"chart":"c","__proto__":{"maker":"x"},"constructor":1,"sizes":[{"size":"M","torso-length":"43-48 cm","__proto__":{"harness":"fixed"},"toString":2}]}';
    const { chart, issues } = read(text);
    expect(codes(issues)).toEqual(new Array(4).fill("chart-key-unknown"));
    expect(chart.maker).toBeUndefined();
    expect(chart.sizes[0]?.harness).toBeUndefined();
    expect(({} as { maker?: string }).maker).toBeUndefined();
  });

  test("a size called __proto__ is a size", () => {
    const { chart } = read(oneSize({ size: "__proto__" }));
    expect(chart.sizes[0]?.name).toBe("__proto__");
  });

  test("sizes of one name: the second is left out", () => {
    const { chart, issues } = read(
      '{"chart":"c","sizes":[{"size":"M","torso-length":"43-48 cm"},\n {"size":"m","torso-length":"48-53 cm"}]}',
    );
    expect(bounds(chart)).toEqual({ M: [430, 480] });
    expect(places(issues)).toEqual(["chart-size-repeated 2:2"]);
  });

  test("two statements that disagree", () => {
    // 16 in = 406.4 mm, 26.4 mm beyond 380 mm.
    const { issues } = read(oneSize({ "torso-length": { from: "38 cm", also: { from: "16 in" } } }));
    expect(issues).toMatchObject([{ code: "chart-statements-disagree", facts: { differenceMm: 26.4 } }]);
  });
});

describe("what is no chart", () => {
  test.each([
    ["", "chart-empty 1:1"],
    ["{", "chart-json-unfinished 1:2"],
    ['{"chart": "a', "chart-json-unfinished 1:13"],
    ['{"chart":\n', "chart-json-unfinished 2:1"],
    ['{"a":1,}', "chart-json-syntax 1:8"],
    ['{\n "a" 1}', "chart-json-syntax 2:6"],
    ["{'a':1}", "chart-json-syntax 1:2"],
    ['{"sizes":NaN}', "chart-json-syntax 1:10"],
    ['{"sizes":-Infinity}', "chart-json-syntax 1:10"],
    ['{"a":1}{"a":1}', "chart-json-syntax 1:8"],
    ["[".repeat(100_000), "chart-json-too-deep 1:33"],
    [`{"a":${'{"a":'.repeat(50_000)}`, "chart-json-too-deep 1:161"],
    ["[]", "chart-value-kind 1:1"],
    ['"chart"', "chart-value-kind 1:1"],
    ["null", "chart-value-kind 1:1"],
    ["{}", "chart-no-sizes 1:1"],
    ['{"sizes":[]}', "chart-no-sizes 1:1"],
    ['{"sizes":[1,null,{}]}', "chart-value-kind 1:11"],
    ['{"chart":"c","sizes":[{"size":"M"}]}', "chart-no-dimension 1:1"],
  ])("%j", (text, place) => {
    expect(places(failureOf(safeParseChartJson(text)))).toContain(place);
  });

  test("names its file", () => {
    expect(failureOf(safeParseChartJson("{", { file: "a.json" }))[0]?.place).toEqual({
      file: "a.json",
      line: 1,
      column: 2,
    });
  });

  test("a number beyond all numbers", () => {
    expect(
      codes(read(oneSize({}).replace('"size":"M"', '"size":"M","capacityLitres":1e999')).issues),
    ).toEqual(["chart-quantity-unreadable"]);
  });
});

test("ten thousand sizes take a moment", () => {
  const sizes = Array.from({ length: 10_000 }, (_, n) => ({
    size: `P${n}`,
    stature: `${n + 1}-${n + 3} mm`,
  }));
  const started = performance.now();
  expect(read(json({ chart: "c", sizes })).chart.sizes.length).toBe(10_000);
  expect(performance.now() - started).toBeLessThan(10_000);
});
