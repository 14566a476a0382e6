import { fc, test } from "@fast-check/vitest";
import {
  auditChart,
  chartDimensions,
  chartsIssues,
  chartToData,
  type SizeChart,
  safeChartFromData,
  safeParseChart,
  safeParseChartCsv,
  safeParseChartJson,
} from "@tapewise/charts";
import { chartSchema } from "@tapewise/charts/schema";
import type { Issue, Outcome } from "@tapewise/outcome";
import { unitsIssues } from "@tapewise/units";
import { describe, expect, test as plainTest } from "vitest";
import { cellOf, mixedRows, rangeRows, tableOf } from "./charts-arbitraries.ts";

const codes = new Set([...Object.keys(chartsIssues), ...Object.keys(unitsIssues)]);
/** A place in a text of the catalogue that no fact has filled. */
const templates = Object.values(chartsIssues).flatMap(({ message, expected }) => [message, expected]);
const unfilled = new RegExp(
  templates
    .flatMap((each) => each.match(/\{\w+\}/g) ?? [])
    .join("|")
    .replaceAll(/[{}]/g, "\\$&"),
);

const named = { chart: "c" };

const chartOf = (outcome: Outcome<SizeChart>): SizeChart => {
  if (!outcome.ok) throw new Error(outcome.issues.map((issue) => issue.message).join("; "));
  return outcome.value;
};

/** Names and intervals, without the words that they were stated in. */
const meaningOf = (chart: SizeChart): unknown =>
  [...chart.sizes, ...chart.belts].map(({ name, ranges }) => [
    name,
    Object.entries(ranges).map(([dimension, range]) => [
      dimension,
      range?.interval,
      range?.basis,
      range?.nominalMm,
    ]),
  ]);

/** What holds of every outcome, whatever was read. */
function expectSound(outcome: Outcome<SizeChart>): void {
  if (!outcome.ok) expect(outcome.issues.length).toBeGreaterThan(0);
  for (const issue of outcome.issues) {
    expect(codes).toContain(issue.code);
    expect(`${issue.message} ${issue.expected}`).not.toMatch(unfilled);
    expect(() => JSON.stringify(issue)).not.toThrow();
  }
  if (outcome.ok) for (const finding of auditChart(outcome.value)) expect(codes).toContain(finding.code);
}

/** Every place lies in the text, the position after its end included. */
function expectPlaced(issues: readonly Issue[], text: string): void {
  const lines = text.replace(/^\uFEFF/, "").split(/\r\n|\n|\r/);
  for (const { place, code } of issues) {
    expect(place, code).toBeDefined();
    const line = lines[(place?.line ?? 0) - 1];
    expect(line, code).toBeDefined();
    expect(place?.column).toBeGreaterThanOrEqual(1);
    expect(place?.column).toBeLessThanOrEqual((line?.length ?? 0) + 1);
  }
}

const scraps = fc
  .array(
    fc.constantFrom(
      ...[
        "size",
        "belt",
        "torso-length (cm)",
        "Hips (in)",
        "capacity (L)",
        "S",
        "M",
        "38-43",
        "46",
        "<104",
        "48+",
        "n/a",
      ],
      ...[
        ",",
        ";",
        "\t",
        "\n",
        "\r\n",
        "\n\n",
        '"',
        '""',
        "#",
        "# cut: women\n",
        "-",
        "–",
        "/",
        " ",
        "½",
        "\uFEFF",
        "cm",
        "0",
      ],
      ...[
        "{",
        "}",
        "[",
        "]",
        ":",
        '"sizes":',
        '"size":"M"',
        '"torso-length":"38 cm"',
        "null",
        "1e999",
        "__proto__",
        "\\u0000",
      ],
    ),
    { maxLength: 40 },
  )
  .map((parts) => parts.join(""));

describe("law: no text makes the reader throw, and every issue has its code and its place in the text", () => {
  test.prop([
    fc.oneof(fc.string({ unit: "binary", maxLength: 60 }), fc.string({ unit: "grapheme" }), scraps),
  ])("whatever form it is taken for", (text) => {
    for (const outcome of [safeParseChart(text), safeParseChartCsv(text), safeParseChartJson(text)]) {
      expectSound(outcome);
      expectPlaced(outcome.issues, text);
    }
  });

  test.prop([mixedRows, fc.nat(), fc.nat(), scraps])(
    "nor does a chart with a piece cut out and another put in",
    (rows, at, length, put) => {
      for (const text of [
        tableOf(rows),
        JSON.stringify(chartToData(chartOf(safeParseChart(tableOf(rows), named)))),
      ]) {
        const from = at % text.length;
        const changed = text.slice(0, from) + put + text.slice(from + (length % 10));
        const outcome = safeParseChart(changed);
        expectSound(outcome);
        expectPlaced(outcome.issues, changed);
      }
    },
  );
});

const keys = fc.constantFrom(
  "chart",
  "sizes",
  "size",
  "torso-length",
  "from",
  "to",
  "also",
  "belts",
  "__proto__",
  "constructor",
  "x",
);
const anything = fc.anything({
  key: keys,
  maxDepth: 4,
  withBigInt: true,
  withDate: true,
  withMap: true,
  withNullPrototype: true,
  withObjectString: true,
  withSet: true,
  withSparseArray: true,
  withTypedArray: true,
});

test.prop([anything])("law: no object makes the reader throw or changes", (data) => {
  const before = fc.stringify(data);
  expectSound(safeChartFromData(data));
  expectSound(
    safeChartFromData({ chart: "c", sizes: [{ size: "M", "torso-length": data }, data], belts: data }),
  );
  expect(fc.stringify(data)).toBe(before);
});

test.prop([mixedRows])("law: separators are equivalent", (rows) => {
  const [comma, semicolon, tab] = [",", ";", "\t"].map((separator) =>
    safeParseChart(tableOf(rows, separator), named),
  );
  expect(semicolon).toEqual(comma);
  expect(tab).toEqual(comma);
});

test.prop([mixedRows, fc.constantFrom("\r\n", "\r", "\n\n", "\n"), fc.boolean(), fc.boolean()])(
  "law: byte order marks, line ends and blank lines change no chart",
  (rows, end, mark, last) => {
    const text = tableOf(rows);
    const other = (mark ? "\uFEFF" : "") + text.replaceAll("\n", end) + (last ? end : "");
    expect(chartOf(safeParseChart(other, named))).toEqual(chartOf(safeParseChart(text, named)));
  },
);

test.prop([mixedRows, fc.constantFrom("–", "—", "‒", "−", "‐", "‑", "~", "…", "...", " to ", " - ", " – ")])(
  "law: dashes of every kind mean the same",
  (rows, dash) => {
    expect(meaningOf(chartOf(safeParseChart(tableOf(rows, ",", dash), named)))).toEqual(
      meaningOf(chartOf(safeParseChart(tableOf(rows), named))),
    );
  },
);

test.prop([
  fc.array(fc.tuple(fc.integer({ min: 80, max: 400 }), fc.integer({ min: 0, max: 60 })), {
    minLength: 1,
    maxLength: 6,
  }),
])("law: a chart in centimetres and the same in exact inches give the same intervals", (eighths) => {
  // One eighth of an inch is 3.175 mm, so n eighths are n * 3175 / 10 000 cm, written out exactly.
  const inches = (n: number): string => `${Math.floor(n / 8)}${n % 8 === 0 ? "" : ` ${n % 8}/8`}`;
  const centimetres = (n: number): string =>
    `${Math.floor((n * 3175) / 10_000)}.${String((n * 3175) % 10_000).padStart(4, "0")}`;
  const table = (unit: string, write: (n: number) => string): string =>
    [
      `size,torso (${unit})`,
      ...eighths.map(([from, width], n) => `Z${n},${write(from)} - ${write(from + width)}`),
    ].join("\n");
  const inInches = safeParseChart(table("in", inches), named);
  const inCentimetres = safeParseChart(table("cm", centimetres), named);
  expect([...inInches.issues, ...inCentimetres.issues]).toEqual([]);
  expect(meaningOf(chartOf(inInches))).toEqual(meaningOf(chartOf(inCentimetres)));
});

test.prop([mixedRows, mixedRows, fc.boolean()])(
  "law: a chart is the same after a round trip through JSON",
  (rows, belts, lone) => {
    const text = `# cut: men\n${tableOf(rows)}\n\n${tableOf(belts).replace("size", "belt")}`;
    const chart = chartOf(
      safeParseChart(text, lone ? { ...named, loneNominalHalfWidth: 20 as never } : named),
    );
    const again = safeParseChart(JSON.stringify(chartToData(chart)));
    expect(again.issues).toEqual([]);
    expect(meaningOf(chartOf(again))).toEqual(meaningOf(chart));
    expect({ ...chartOf(again), sizes: [], belts: [] }).toEqual({ ...chart, sizes: [], belts: [] });
    expect(safeChartFromData(chartToData(chart))).toEqual(again);
  },
);

test.prop([
  mixedRows.chain((rows) =>
    fc.tuple(fc.constant(rows), fc.shuffledSubarray([...rows], { minLength: rows.length })),
  ),
])("law: the order of the lines changes no size", ([rows, shuffled]) => {
  const sizesOf = (all: typeof rows): ReadonlyMap<string, unknown> =>
    new Map(chartOf(safeParseChart(tableOf(all), named)).sizes.map((size) => [size.name, size]));
  const [one, other] = [sizesOf(rows), sizesOf(shuffled)];
  for (const { name } of rows) expect(other.get(name)).toEqual(one.get(name));
});

test.prop([
  rangeRows,
  fc.nat(),
  fc.constantFrom("{name}", "{name},", "{name},?,x,y", "{name},43-38", "{name},a b c", ",38-43"),
])("law: a line that cannot be read leaves the others as they are", (rows, at, broken) => {
  const lines = tableOf([...rows, { name: "Last", range: { from: 40, to: 45 }, nominal: undefined }]).split(
    "\n",
  );
  const line = 1 + (at % rows.length);
  const name = rows[line - 1]?.name ?? "";
  const whole = chartOf(safeParseChart(lines.join("\n"), named));
  const outcome = safeParseChart(lines.with(line, broken.replace("{name}", name)).join("\n"), named);
  const others = (chart: SizeChart): unknown => chart.sizes.filter((size) => size.name !== name);
  expect(others(chartOf(outcome))).toEqual(others(whole));
  if (broken !== "{name},") {
    expect(outcome.issues.length).toBeGreaterThan(0);
    for (const issue of outcome.issues) expect(issue.place?.line).toBe(line + 1);
  }
});

test.prop([mixedRows, fc.constantFrom("colour", "price", "x", "SKU")])(
  "law: an unknown column is reported once and changes no size",
  (rows, header) => {
    const [first = "", ...lines] = tableOf(rows).split("\n");
    const wider = [`${first},${header}`, ...lines.map((line, n) => `${line},${n}`)].join("\n");
    const outcome = safeParseChart(wider, named);
    const narrow = safeParseChart(tableOf(rows), named);
    const codesOf = (issues: readonly Issue[]): readonly string[] => issues.map((issue) => issue.code);
    expect(codesOf(outcome.issues)).toEqual(["chart-column-unknown", ...codesOf(narrow.issues)]);
    expect(chartOf(outcome)).toEqual(chartOf(narrow));
  },
);

test.prop([rangeRows])(
  "law: a column repeated in the other unit to the nearest half centimetre is no contradiction",
  (rows) => {
    const lines = rows.map((row) => {
      const inches =
        row.range === undefined ? [] : [row.range.from, row.range.to].map((cm) => (cm / 2.54).toFixed(2));
      return `${row.name},${cellOf(row)},${inches.join("-")}`;
    });
    // Inches to the hundredth are off by 0.127 mm at most, and half a step of whole centimetres is 5 mm.
    const outcome = safeParseChart(["size,torso (cm),torso (in)", ...lines].join("\n"), named);
    expect(outcome.issues).toEqual([]);
  },
);

/** Whether the importer found the form wrong, as opposed to what the form says. */
const isAboutForm = ({ code }: Issue): boolean =>
  /^chart-(?:value-kind|key-unknown|word-unknown|quantity-unreadable|text-|size-unnamed|unnamed|no-sizes)/.test(
    code,
  );

/** Mostly one of the good values, sometimes one of the bad ones, so that charts with one fault are common. */
const mostly = (good: readonly unknown[], bad: readonly unknown[]): fc.Arbitrary<unknown> =>
  fc.oneof(
    { arbitrary: fc.constantFrom(...good), weight: 60 },
    { arbitrary: fc.constantFrom(...bad), weight: 1 },
  );
const part = (good: fc.Arbitrary<unknown>, bad: readonly unknown[]): fc.Arbitrary<unknown> =>
  fc.oneof({ arbitrary: good, weight: 60 }, { arbitrary: fc.constantFrom(...bad), weight: 1 });

const text = mostly(["a", "b c", "é", "x".repeat(200)], ["", " ", "x".repeat(201), 1, null, []]);
const length = mostly(["38 cm", "43 cm", "15 1/2 in"], [38, null, ["38 cm"]]);
const stray = fc.record({ x: fc.constant(1) });
const without = { requiredKeys: [] };
const ends = fc.oneof(
  { arbitrary: fc.record({ from: length, to: length, nominal: length }, without), weight: 60 },
  { arbitrary: stray, weight: 1 },
);
const cell = mostly(["38-43 cm", "46 cm", "", "-"], [5, true, [], null]);
const range = fc.oneof(
  { arbitrary: cell, weight: 20 },
  { arbitrary: ends, weight: 20 },
  { arbitrary: fc.record({ from: length, also: fc.oneof(cell, ends) }, without), weight: 20 },
  { arbitrary: fc.record({ from: length, also: fc.record({ also: cell }) }), weight: 1 },
);
const quantity = mostly([1, 40.5], [0, -1, "40", null]);
const sizes = fc.oneof(
  {
    arbitrary: fc.record(
      {
        size: text,
        covers: part(fc.array(text, { maxLength: 2 }), ["S", {}]),
        "torso-length": range,
        "hip-girth": range,
        capacityLitres: quantity,
        massGrams: quantity,
        harness: mostly(["fixed", "adjustable"], ["rigid", "", 1]),
      },
      { requiredKeys: ["size"] },
    ),
    weight: 40,
  },
  { arbitrary: fc.constantFrom({}, { size: "M", hip: "80 cm" }, [], null, "M"), weight: 1 },
);
const belts = fc.oneof(
  {
    arbitrary: fc.record({ belt: text, "hip-belt-girth": range }, { requiredKeys: ["belt"] }),
    weight: 40,
  },
  { arbitrary: fc.constantFrom({}, { belt: "M", massGrams: 1 }), weight: 1 },
);
const charts = fc.oneof(
  {
    arbitrary: fc.record(
      {
        chart: text,
        maker: text,
        product: text,
        cut: mostly(["women", "youth"], ["ladies", "", 1]),
        harness: mostly(["fixed", "adjustable"], ["rigid", 1]),
        swappable: part(fc.array(mostly(["hip-belt", "harness"], ["lid", 1, ""]), { maxLength: 2 }), [
          "lid",
          {},
        ]),
        sizes: part(fc.array(sizes, { minLength: 1, maxLength: 2 }), [[], {}, "M"]),
        belts: part(fc.array(belts, { maxLength: 1 }), [{}, 1]),
      },
      { requiredKeys: ["chart", "sizes"] },
    ),
    weight: 40,
  },
  {
    arbitrary: fc.constantFrom({}, [], { chart: "c" }, { chart: "c", sizes: [{ size: "M" }], brand: "x" }),
    weight: 1,
  },
);

const answers = { accepted: 0, refused: 0 };

test.prop([charts], { numRuns: 2000 })(
  "law: the schema accepts exactly the forms that the importer does not object to",
  (data) => {
    const objections = safeChartFromData(data).issues.filter(isAboutForm);
    const isAccepted = chartSchema.safeParse(data).success;
    answers[isAccepted ? "accepted" : "refused"]++;
    expect(objections.length === 0).toBe(isAccepted);
  },
);

plainTest("and both answers of that law came up often", () => {
  expect(answers.accepted).toBeGreaterThan(200);
  expect(answers.refused).toBeGreaterThan(200);
});

test.prop([fc.constantFrom(...chartDimensions), fc.constantFrom("cm", "in", "mm")])(
  "law: every dimension can be a column by its id",
  (dimension, unit) => {
    const chart = chartOf(safeParseChart(`size,${dimension} (${unit})\nM,30-40`, named));
    expect(Object.keys(chart.sizes[0]?.ranges ?? {})).toEqual([dimension]);
  },
);
