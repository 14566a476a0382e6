import { safeParseChartCsv } from "@tapewise/charts";
import { describe, expect, test } from "vitest";
import { bounds, codes, failureOf, places, read } from "./charts-in-tests.ts";

const OPEN = Number.POSITIVE_INFINITY;

describe("a table as people keep it", () => {
  const { chart, issues } = read(`size,torso-length (cm),hip-belt-girth (cm),capacity (L)
S,38-43,70-98,43
M,46,"<104",45
L,48+,80-120,48
`);

  test("gives sizes in its order, with intervals in millimetres", () => {
    expect(issues).toEqual([]);
    expect(chart.sizes.map((size) => size.name)).toEqual(["S", "M", "L"]);
    expect(bounds(chart)).toEqual({ S: [380, 430], M: [430, 480], L: [480, OPEN] });
    expect(bounds(chart, "hip-belt-girth")).toEqual({ S: [700, 980], M: [-OPEN, 1040], L: [800, 1200] });
    expect(chart.sizes.map((size) => size.capacityLitres)).toEqual([43, 45, 48]);
  });

  test("tells what was stated from what was inferred", () => {
    expect(chart.sizes[0]?.ranges["torso-length"]).toEqual({
      interval: { from: 380, to: 430, fromClosed: true, toClosed: true },
      basis: "range",
      stated: ["38-43 cm"],
    });
    expect(chart.sizes[1]?.ranges["torso-length"]).toMatchObject({
      basis: "nominal",
      nominalMm: 460,
      stated: ["46 cm"],
    });
  });

  test("closes finite ends, and never infinite ones", () => {
    expect(chart.sizes[1]?.ranges["hip-belt-girth"]?.interval).toEqual({
      from: -OPEN,
      to: 1040,
      fromClosed: false,
      toClosed: true,
    });
  });
});

describe("headers", () => {
  test.each([
    ["torso-length (cm)", "torso-length"],
    ["Torso (cm)", "torso-length"],
    ["TORSO LENGTH [CM]", "torso-length"],
    ["Torso, cm", "torso-length"],
    ["Back length cm", "torso-length"],
    ["torso_length_cm", "torso-length"],
    ["Torso length in cm", "torso-length"],
    ["Torso (centimetres)", "torso-length"],
    ["Hip (widest) (cm)", "hip-girth"],
    ["Hip belt (cm)", "hip-belt-girth"],
    ["Chest cm", "chest-girth"],
    ["Height (cm)", "stature"],
    ["Hips (cm)", "unstated-hip-girth"],
    ["unstated-hip-girth (cm)", "unstated-hip-girth"],
  ] as const)("%s", (header, dimension) => {
    const { chart } = read(`size\t${header}\nM\t95-105\n`);
    expect(bounds(chart, dimension)).toEqual({ M: [950, 1050] });
  });

  test.each(["Torso (in)", "Torso in", 'Torso (")', "Torso length, inches", "Torso in inches"])(
    "%s is in inches",
    (header) => {
      // 15 in = 381 mm, 17 in = 431.8 mm.
      expect(bounds(read(`size\t${header}\nM\t15-17\n`).chart)).toEqual({ M: [381, 431.8] });
    },
  );

  test("hip alone is kept apart, with a warning at the header", () => {
    const { issues } = read("size,Hips (cm)\nM,80-100");
    expect(issues).toMatchObject([
      {
        code: "chart-hip-unstated",
        severity: "warning",
        received: "Hips (cm)",
        place: { line: 1, column: 6 },
      },
    ]);
  });

  test("other words with several meanings are left out, and say what they may mean", () => {
    const { chart, issues } = read("size,torso (cm),back (cm)\nM,43-48,40");
    expect(Object.keys(chart.sizes[0]?.ranges ?? {})).toEqual(["torso-length"]);
    expect(issues).toMatchObject([{ code: "chart-column-ambiguous", place: { line: 1, column: 17 } }]);
    expect(issues[0]?.expected).toContain("back-waist-length");
  });

  test("unknown columns are reported and left out", () => {
    const { issues } = read("size,torso (cm),colour,torso lenght (cm)\nM,43-48,red,1-2");
    expect(places(issues)).toEqual(["chart-column-unknown 1:17", "chart-column-unknown 1:24"]);
    expect(issues[1]?.message).toContain("did you mean “torso-length”?");
  });

  test("a unit of another kind", () => {
    const { issues } = read("size,torso (cm),hip belt (kg),weight (L)\nM,43-48,80-90,1");
    expect(codes(issues)).toEqual(["chart-column-unit-unknown", "chart-column-unit-unknown"]);
  });

  test("a bracket that is no unit above cells without one is told once, and the column left out", () => {
    const { chart, issues } = read("size,torso-length (furlong),hip belt (cm)\nS,38-43,70-80\nM,42-47,80-90");
    expect(places(issues)).toEqual(["chart-column-unit-unread 1:6"]);
    expect(issues[0]?.message).toContain("“furlong” is no unit that is read");
    expect(Object.keys(chart.sizes[0]?.ranges ?? {})).toEqual(["hip-belt-girth"]);
  });

  test("a bracket is a mere remark where cells name their units", () => {
    const { chart, issues } = read("size,hip girth (all round)\nS,80-90 cm\nM,88-98\nL,95-105 cm");
    expect(bounds(chart, "hip-girth")).toEqual({ S: [800, 900], L: [950, 1050] });
    expect(codes(issues)).toEqual(["length-no-unit", "length-no-unit"]);
  });

  test("without a unit in the header, cells must have their own", () => {
    const { chart, issues } = read("size,torso\nS,38-43 cm\nM,17-19 in\nL,48-53");
    expect(bounds(chart)).toEqual({ S: [380, 430], M: [431.8, 482.6] });
    expect(places(issues)).toEqual(["length-no-unit 4:3", "length-no-unit 4:3"]);
  });

  test("a column stated twice is left out the second time", () => {
    const { chart, issues } = read("size,torso (cm),torso length (cm)\nM,43-48,1-2");
    expect(bounds(chart)).toEqual({ M: [430, 480] });
    expect(places(issues)).toEqual(["chart-column-repeated 1:17"]);
  });

  test("the sizes may stand in another column that says so, never in a dimension's", () => {
    expect(bounds(read("torso (cm),size\n43-48,M").chart)).toEqual({ M: [430, 480] });
    expect(codes(failureOf(safeParseChartCsv("torso (cm),hip belt (cm)\n43-48,80-90")))).toContain(
      "chart-csv-size-column-missing",
    );
  });

  test("a table with sizes across the top is recognised", () => {
    const issues = failureOf(safeParseChartCsv(",S,M,L\nTorso (cm),38-43,43-48,48-53\n"));
    expect(codes(issues)).toContain("chart-csv-transposed");
  });
});

describe("inch and centimetre columns of one dimension", () => {
  test("that agree say nothing; the first one counts", () => {
    const { chart, issues } = read("size,torso (cm),torso (in)\nS,38-43,15-17\nM,43-48,17-19");
    expect(issues).toEqual([]);
    expect(bounds(chart)).toEqual({ S: [380, 430], M: [430, 480] });
    expect(chart.sizes[0]?.ranges["torso-length"]?.stated).toEqual(["38-43 cm", "15-17 in"]);
  });

  test("that disagree are reported by how much, beyond half a step of the coarser one", () => {
    // 19 in = 482.6 mm; 482.6 - 430 = 52.6 mm, where half of 25.4 mm is 12.7 mm.
    const { issues } = read("size,torso (cm),torso (in)\nS,38-43,15-19");
    expect(issues).toMatchObject([
      {
        code: "chart-statements-disagree",
        severity: "warning",
        path: ["sizes", 0, "torso-length"],
        facts: { differenceMm: 52.6, allowedMm: 12.7, end: "upper end" },
        place: { line: 2, column: 3 },
      },
    ]);
  });

  test("the allowance is half a step: 12.7 mm passes, a finer writing does not", () => {
    // 15 in = 381 mm. Beside 39.37 cm (15 1/2 in) the difference is 12.7 mm, all that whole inches allow.
    expect(read("size,torso (cm),torso (in)\nS,39.37-43,15-17").issues).toEqual([]);
    // In quarter inches half a step is 3.175 mm and in whole centimetres 5 mm: 390 - 381 = 9 mm is more than both.
    expect(codes(read("size,torso (cm),torso (in)\nS,39-43,15 0/4-17").issues)).toContain(
      "chart-statements-disagree",
    );
  });

  test("of different kinds", () => {
    expect(codes(read("size,torso (cm),torso (in)\nS,38-43,15+").issues)).toEqual([
      "chart-statements-differ-in-kind",
    ]);
  });

  test("may be one column with both units", () => {
    const { chart, issues } = read("size,torso (cm / in)\nS,38-43 / 15-17\nM,43-48 (17-19)");
    expect(issues).toEqual([]);
    expect(bounds(chart)).toEqual({ S: [380, 430], M: [430, 480] });
    expect(chart.sizes[1]?.ranges["torso-length"]?.stated).toEqual(["43-48 cm", "17-19 in"]);
  });

  test("fill in for each other", () => {
    expect(bounds(read("size,torso (cm),torso (in)\nS,-,15-17").chart)).toEqual({ S: [381, 431.8] });
  });
});

describe("separators, quotes and lines", () => {
  const rows = { S: [385, 430], M: [430, 480] };

  test.each([
    ["comma", 'size,torso (cm)\nS,"38,5-43"\nM,43-48\n'],
    ["semicolon", "size;torso (cm)\nS;38,5-43\nM;43-48\n"],
    ["tab, as copied from a page", "size\ttorso (cm)\nS\t38,5–43\nM\t43 – 48\n"],
    ["byte order mark", "\uFEFFsize;torso (cm)\nS;38,5-43\nM;43-48\n"],
    ["CRLF", "size;torso (cm)\r\nS;38,5-43\r\nM;43-48\r\n"],
    ["CR", "size;torso (cm)\rS;38,5-43\rM;43-48\r"],
    ["blank lines", "\n\nsize;torso (cm)\n\nS;38,5-43\n;;\nM;43-48\n\n\n"],
    ["no end of line", "size;torso (cm)\nS;38,5-43\nM;43-48"],
    ["quoted everywhere", '"size";"torso (cm)"\n"S";"38,5-43"\n"M";"43-48"\n'],
    ["a header over two lines", '"size";"torso\n(cm)"\nS;38,5-43\nM;43-48\n'],
    ["a separator named in the first line", "sep=;\r\nsize;torso, cm\r\nS;38,5-43\r\nM;43-48\r\n"],
    ["empty columns at the end", "size;torso (cm);;\nS;38,5-43;;\nM;43-48;;\n"],
    ["commas in a tab file's header", "size\ttorso, cm\nS\t38,5-43\nM\t43-48\n"],
  ])("%s", (_name, text) => {
    const { chart, issues } = read(text);
    expect(issues).toEqual([]);
    expect(bounds(chart)).toEqual(rows);
  });

  test("ragged lines keep their readable cells", () => {
    const { chart, issues } = read(
      "size,torso (cm),hip belt (cm)\nS,38-43\nM,43-48,80-90,extra\nL,48-53,90-100\n",
    );
    expect(bounds(chart)).toEqual({ S: [380, 430], M: [430, 480], L: [480, 530] });
    expect(bounds(chart, "hip-belt-girth")).toEqual({ M: [800, 900], L: [900, 1000] });
    expect(places(issues)).toEqual(["chart-row-ragged 2:1", "chart-row-ragged 3:1"]);
  });

  test("a quotation mark that is never closed spoils nothing", () => {
    const { chart, issues } = read('size,torso (cm)\nS,"38-43\nM,"43-48"\nL,48-53\n');
    expect(bounds(chart)).toEqual({ S: [380, 430], M: [430, 480], L: [480, 530] });
    expect(places(issues)).toEqual(["chart-csv-quote 2:3"]);
  });

  test("issues know their line behind a cell of several lines", () => {
    const { issues } = read('size,"torso\n\n(cm)"\nS,43-38\nM,43-48\n');
    expect(places(issues)).toEqual(["chart-range-reversed 4:3"]);
  });
});

describe("sizes", () => {
  test("of one name are never merged: the first stays as it is", () => {
    const { chart, issues } = read("size,torso (cm),hip belt (cm)\nM,43-48,-\nM,-,80-90\nm,1-2,3-4");
    expect(chart.sizes.map((size) => size.name)).toEqual(["M"]);
    expect(Object.keys(chart.sizes[0]?.ranges ?? {})).toEqual(["torso-length"]);
    expect(places(issues)).toEqual(["chart-size-repeated 3:1", "chart-size-repeated 4:1"]);
  });

  test("without a name are reported and left out", () => {
    const { chart, issues } = read("size,torso (cm)\n,38-43\nM,43-48");
    expect(bounds(chart)).toEqual({ M: [430, 480] });
    expect(places(issues)).toEqual(["chart-size-unnamed 2:1"]);
  });

  test.each(["\u200B", "\u2060\u200D", "\uFEFF", "\u2800"])("named invisibly (%j) have no name", (name) => {
    const { chart, issues } = read(`size,torso (cm)\nM,43-48\n${name},38-43`);
    expect(bounds(chart)).toEqual({ M: [430, 480] });
    expect(places(issues)).toEqual(["chart-size-unnamed 3:1"]);
  });

  test.each([
    ["S/M", ["S", "M"]],
    ["S-M", ["S", "M"]],
    ["XS/S/M", ["XS", "S", "M"]],
    ["Small / Medium", ["Small", "Medium"]],
    ["Regular/Tall", ["Regular", "Tall"]],
    ["36/38", ["36", "38"]],
    ["36-38", ["36-38"]],
    ["X-Large", ["X-Large"]],
    ["M/Tall", ["M/Tall"]],
    ["One size", ["One size"]],
    ["N/A", ["N/A"]],
  ])("%s covers %j", (name, covers) => {
    expect(read(`size,torso (cm)\n${name},38-48`).chart.sizes[0]?.covers).toEqual(covers);
  });

  test("a single nominal length stays without a range, unless the caller says how far it reaches", () => {
    const text = "size,torso (cm),hip belt (cm)\nOne size,46,70-120";
    const { chart, issues } = read(text);
    expect(Object.keys(chart.sizes[0]?.ranges ?? {})).toEqual(["hip-belt-girth"]);
    expect(issues).toMatchObject([{ code: "chart-nominal-alone", place: { line: 2, column: 10 } }]);
  });
});

describe("capacity, mass and harness", () => {
  // 1 lb = 453.59237 g and 1 oz = 453.59237 / 16 g exactly (NIST SP 811 (2008), App. B.8).
  test.each([
    ["mass (g)", "1400", 1400],
    ["Weight (kg)", "1.4", 1400],
    ["weight, lb", "3", 3 * 453.59237],
    ["weight oz", "48", 3 * 453.59237],
    ["weight", "2 lb 8 oz", 2 * 453.59237 + 8 * (453.59237 / 16)],
    ["weight", "1400 g", 1400],
  ])("%s: %s", (header, cell, grams) => {
    const { chart, issues } = read(`size\ttorso (cm)\t${header}\nM\t43-48\t${cell}`);
    expect(issues).toEqual([]);
    expect(chart.sizes[0]?.massGrams).toBeCloseTo(grams, 9);
  });

  test.each([
    ["capacity (L)", "43", 43],
    ["Volume, litres", "43,5", 43.5],
    ["litres", "43", 43],
    // 1 in³ = 2.54³ cm³ = 16.387064 cm³, so 2600 in³ = 42.6063664 L.
    ["capacity (cu in)", "2600", 42.6063664],
  ])("%s: %s", (header, cell, litres) => {
    const { chart, issues } = read(`size\ttorso (cm)\t${header}\nM\t43-48\t${cell}`);
    expect(issues).toEqual([]);
    expect(chart.sizes[0]?.capacityLitres).toBeCloseTo(litres, 9);
  });

  test.each(["about 40", "40-45", "1,200", "-5", "0", "40 kg"])("a capacity of %s is not read", (cell) => {
    const { chart, issues } = read(`size\ttorso (cm)\tcapacity (L)\nM\t43-48\t${cell}`);
    expect(chart.sizes[0]).not.toHaveProperty("capacityLitres");
    expect(places(issues)).toEqual(["chart-quantity-unreadable 2:9"]);
  });

  test("a quantity without a unit anywhere is not read", () => {
    expect(codes(read("size,torso (cm),weight\nM,43-48,1400").issues)).toEqual(["chart-quantity-unreadable"]);
  });

  test("a harness of one size", () => {
    const { chart, issues } = read("size,torso (cm),harness\nM,43-48,Fixed\nL,48-53,adjustible");
    expect(chart.sizes[0]?.harness).toBe("fixed");
    expect(chart.sizes[1]).not.toHaveProperty("harness");
    expect(issues).toMatchObject([{ code: "chart-word-unknown", place: { line: 3, column: 9 } }]);
  });
});

describe("what is said of the whole chart", () => {
  test("in remarks at the top", () => {
    const { chart, issues } = read(
      "# chart: Oboe & Turnip Bassoon 65\n# Maker: Oboe, Turnip & Sons\n# product: Bassoon 65\n# cut: Women\n# harness: fixed\n# swappable: hip-belt, harness\n# measured by the crew\nsize,torso (cm)\nM,43-48",
    );
    expect(issues).toEqual([]);
    expect(chart).toMatchObject({
      chart: "Oboe & Turnip Bassoon 65",
      maker: "Oboe, Turnip & Sons",
      product: "Bassoon 65",
      cut: "women",
      harness: "fixed",
      swappable: ["hip-belt", "harness"],
    });
  });

  test("as spreadsheets save them", () => {
    const { chart } = read('"# maker: Oboe, Turnip & Sons",,\n# cut: men,,\nsize,torso (cm),x\nM,43-48,');
    expect(chart).toMatchObject({ maker: "Oboe, Turnip & Sons", cut: "men" });
  });

  test("unknown, repeated and wrong words are reported with their line", () => {
    const { chart, issues } = read(
      "# markr: A\n# cut: womens\n# maker: B\n# maker: C\nsize,torso (cm)\nM,43-48",
    );
    expect(places(issues)).toEqual([
      "chart-key-unknown 1:1",
      "chart-key-repeated 4:1",
      "chart-word-unknown 2:1",
    ]);
    expect(issues[0]?.message).toContain("did you mean “maker”?");
    expect(chart.maker).toBe("B");
    expect(chart).not.toHaveProperty("cut");
  });

  test("by the caller, where the text is silent", () => {
    const { chart } = read("# maker: B\nsize,torso (cm)\nM,43-48", {
      maker: "A",
      cut: "men",
      harness: "adjustable",
      product: "P",
      swappable: ["harness"],
    });
    expect(chart).toMatchObject({
      maker: "B",
      cut: "men",
      harness: "adjustable",
      product: "P",
      swappable: ["harness"],
    });
  });

  test("none can be swapped, whatever the caller knows", () => {
    const { chart } = read("# swappable: none\nsize,torso (cm)\nM,43-48", { swappable: ["harness"] });
    expect(chart.swappable).toEqual([]);
  });

  test("a chart without a name is questioned", () => {
    expect(places(safeParseChartCsv("size,torso (cm)\nM,43-48").issues)).toEqual(["chart-unnamed 1:1"]);
  });
});

describe("hip belts sized separately", () => {
  test("stand in a second table", () => {
    const { chart, issues } = read(
      "# swappable: hip-belt\nsize,torso (cm)\nS,38-43\nM,43-48\n\nbelt,hip-belt-girth (cm)\nS,70-90\nL,85-110\n",
    );
    expect(issues).toEqual([]);
    expect(chart.sizes.map((size) => size.name)).toEqual(["S", "M"]);
    expect(chart.belts.map((belt) => [belt.name, belt.ranges["hip-belt-girth"]?.interval.to])).toEqual([
      ["S", 900],
      ["L", 1100],
    ]);
  });

  test("issues point into the second table", () => {
    const { issues } = read("size,torso (cm)\nS,38-43\n\nbelt,hip-belt-girth (cm)\nS,90-70\n");
    expect(issues).toMatchObject([
      { code: "chart-range-reversed", path: ["belts", 0, "hip-belt-girth"], place: { line: 5, column: 3 } },
    ]);
  });
});

describe("what is no chart", () => {
  test.each([
    ["", "chart-empty"],
    [" \n\t\r\n", "chart-empty"],
    ["\uFEFF", "chart-empty"],
    ["\u0089PNG\r\n\u001a\n\0\0\0\rIHDR", "chart-not-text"],
    ["\uFFFD\uFFFD\uFFFDabc", "chart-not-text"],
    ["x".repeat(1_000_001), "chart-too-large"],
    ["size,torso (cm)\n", "chart-no-sizes"],
    ["size\nS\nM\n", "chart-no-dimension"],
    ["hello world", "chart-no-sizes"],
    ["belt,hip-belt-girth (cm)\nS,70-90", "chart-no-sizes"],
  ])("%j", (text, code) => {
    const issues = failureOf(safeParseChartCsv(text, { file: "a.csv" }));
    expect(codes(issues)).toContain(code);
    for (const issue of issues) expect(issue.place).toMatchObject({ file: "a.csv" });
  });

  test("a megabyte is looked at only as far as needed", () => {
    const started = performance.now();
    expect(codes(failureOf(safeParseChartCsv("S,38-43\n".repeat(6_000_000))))).toEqual(["chart-too-large"]);
    expect(performance.now() - started).toBeLessThan(1000);
  });

  test("too many lines and columns", () => {
    const lines = failureOf(safeParseChartCsv(`size,torso (cm)\n${"S,1\n".repeat(50_001)}`));
    expect(codes(lines)).toContain("chart-too-many-sizes");
    const { issues } = read(`size,torso (cm)${",x".repeat(200_000)}\nM,43-48${",1".repeat(200_000)}`);
    expect(codes(issues).at(0)).toBe("chart-too-many-columns");
    expect(issues.length).toBe(1 + 98);
  });
});

describe("ten thousand lines", () => {
  test("take a moment, and twice as many about twice that", () => {
    const table = (count: number): string =>
      `size,torso (cm),hip belt (cm)\n${Array.from({ length: count }, (_, n) => `P${n},${n + 1}-${n + 6},${n % 2 === 0 ? n + 1 : `${n + 1}-${n + 9}`}`).join("\n")}`;
    const time = (count: number): number => {
      const text = table(count);
      const started = performance.now();
      expect(read(text).chart.sizes.length).toBe(count);
      return performance.now() - started;
    };
    time(1000);
    expect(time(10_000)).toBeLessThan(10_000);
    expect(time(20_000) / time(5000)).toBeLessThan(16);
  });
});

test("a half-width must be a length", () => {
  const text = "size,torso (cm)\nM,46";
  for (const loneNominalHalfWidth of [0, -1, Number.NaN, Number.POSITIVE_INFINITY]) {
    expect(() => safeParseChartCsv(text, { loneNominalHalfWidth: loneNominalHalfWidth as never })).toThrow(
      "loneNominalHalfWidth must be a finite length above zero",
    );
  }
});
