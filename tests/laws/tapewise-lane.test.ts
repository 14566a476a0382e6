import { fc, test } from "@fast-check/vitest";
import { type SizeChart, safeParseChart } from "@tapewise/charts";
import { buildFeatures } from "@tapewise/fit";
import { unwrap } from "@tapewise/outcome";
import { answerRawLine } from "tapewise/batch";
import { describe, expect } from "vitest";
import { createBlockAnswerer } from "../../packages/tapewise/src/batch/lane/answer-block.ts";
import { createBytePage } from "../../packages/tapewise/src/batch/lane/byte-page.ts";
import { createLane } from "../../packages/tapewise/src/batch/lane/create-lane.ts";
import { createLineBlocks } from "../../packages/tapewise/src/batch/lane/line-blocks.ts";
import { cleanJson } from "../../packages/tapewise/src/command/text/clean.ts";

const chart = (name: string, rows: readonly string[]): SizeChart =>
  unwrap(safeParseChart(`${rows.join("\n")}\n`, { chart: name }));

/** Charts of every kind that a line may meet: overlaps, gaps, nominal lengths, open ends, belts, an unstated girth. */
const charts: readonly SizeChart[] = [
  chart("Overlaps", [
    "# cut: women",
    "# harness: fixed",
    "size,torso-length (cm),hip-belt-girth (cm),capacity (L)",
    "XS,34-38.5,62-84,42",
    "S,36.5-41,68-92,45",
    "M,39-43.5,74-100,48",
    "L,41.5-46,80-108,51",
  ]),
  chart("Nominal “é”", ["size,torso-length (cm),capacity (L)", "S,42,40", "M,45,40", "L,48,44"]),
  chart("Open", ["size,torso-length (in),shoulder-breadth (in)", "S,<16,", "M,16-18,14-17", "L,19+,15-19"]),
  chart("Says hip", ["size,torso-length (cm),hip (cm)", "S,38-43,70-98", "M,42-47,76-104"]),
];

const number = fc.oneof(
  { weight: 8, arbitrary: fc.integer({ min: 330, max: 520 }).map((mm) => `${(mm / 10).toFixed(1)} cm`) },
  { weight: 2, arbitrary: fc.integer({ min: 33, max: 52 }).map((cm) => `${cm} cm`) },
  { weight: 2, arbitrary: fc.integer({ min: 330, max: 520 }).map((mm) => `${mm}mm`) },
  {
    weight: 4,
    arbitrary: fc.integer({ min: 104, max: 164 }).map((eighths) => {
      const [whole, rest] = [Math.floor(eighths / 8), eighths % 8];
      return rest === 0
        ? `${whole} in`
        : `${whole} ${["", "1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8"][rest]} in`;
    }),
  },
  {
    weight: 1,
    arbitrary: fc.constantFrom(
      "43,2 cm",
      "044 cm",
      "4.4e1 cm",
      "17.25in",
      "0.44 m",
      "44",
      "",
      "18 2/4 in",
      "43.20 cm",
    ),
  },
);
/** Readings that belong together: one of them again and again, a little off. */
const readings = (scale: number) =>
  fc.oneof(
    {
      weight: 6,
      arbitrary: fc
        .tuple(
          fc.integer({ min: 340, max: 500 }),
          fc.array(fc.integer({ min: -14, max: 14 }), { minLength: 1, maxLength: 6 }),
          fc.constantFrom(1, 5, 10),
        )
        .map(([mm, offs, step]) =>
          offs.map((off) => `${(Math.round((mm * scale + off) / step) * step) / 10} cm`),
        ),
    },
    {
      weight: 2,
      arbitrary: fc
        .tuple(
          fc.integer({ min: 56, max: 78 }),
          fc.array(fc.integer({ min: -2, max: 2 }), { minLength: 1, maxLength: 5 }),
        )
        .map(([quarters, offs]) =>
          offs.map((off) => {
            const sum = Math.round(quarters * scale) + off;
            const [whole, rest] = [Math.floor(sum / 4), sum % 4];
            return rest === 0 ? `${whole} in` : `${whole} ${["", "1/4", "1/2", "3/4"][rest]} in`;
          }),
        ),
    },
    { weight: 1, arbitrary: fc.array(number, { maxLength: 4 }) },
  );

const optional = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined });
const person = fc.record({
  id: optional(
    fc.oneof(fc.string({ maxLength: 6 }), fc.integer(), fc.constantFrom("a b", "é", 'q"', 12, 1e20)),
  ),
  cut: optional(fc.constantFrom("women", "men", "youth", null)),
  stature: optional(
    fc.oneof(
      fc.integer({ min: 140, max: 205 }).map((cm) => `${cm} cm`),
      fc.constantFrom("5 ft 7 in", "1.71 m", "68 in"),
    ),
  ),
  measuredBy: optional(fc.constantFrom("self", "helper")),
  tool: optional(fc.constantFrom("tape", "cord-and-ruler", "short-rule")),
  landmarksFoundAfresh: optional(fc.boolean()),
  build: optional(fc.subarray([...buildFeatures])),
  firstPack: optional(fc.boolean()),
  readings: fc.record({
    "torso-length": readings(1),
    ...{ "hip-belt-girth": optional(readings(2.1)), "shoulder-breadth": optional(readings(0.9)) },
  }),
});

/** JSON as programs write it: tight, or with a space after every mark. */
const line = fc
  .tuple(person, fc.boolean())
  .map(([one, isWide]) =>
    isWide ? JSON.stringify(one, undefined, " ").replaceAll(/\n */g, " ") : JSON.stringify(one),
  );

const encoder = new TextEncoder();

function bySlowLane(
  texts: readonly string[],
  list: readonly SizeChart[],
  prior: "automatic" | "none",
): string {
  return texts
    .map((text, k) => answerRawLine({ number: k + 1, bytes: encoder.encode(text) }, list, { prior }))
    .map((answer) => (answer === undefined ? "" : `${cleanJson(answer)}\n`))
    .join("");
}

function byBlocks(
  chunks: readonly Uint8Array[],
  list: readonly SizeChart[],
  prior: "automatic" | "none",
): string {
  const answer = createBlockAnswerer(list, prior);
  const blocks = createLineBlocks(100_000);
  const page = createBytePage(64);
  for (const block of [...chunks.flatMap((chunk) => blocks.push(chunk)), ...blocks.end()])
    answer(block, page);
  return new TextDecoder().decode(page.bytes.subarray(0, page.length));
}

describe("the quick way of a batch", () => {
  test.prop([fc.array(line, { minLength: 1, maxLength: 12 }), fc.subarray([...charts], { minLength: 1 })], {
    numRuns: 150,
  })("law: it gives the bytes of the other way, whoever is asked about", (texts, list) => {
    const bytes = encoder.encode(texts.map((text) => `${text}\n`).join(""));
    expect(byBlocks([bytes], list, "automatic")).toBe(bySlowLane(texts, list, "automatic"));
  });

  test.prop(
    [fc.array(line, { minLength: 1, maxLength: 6 }), fc.infiniteStream(fc.integer({ min: 1, max: 300 }))],
    {
      numRuns: 60,
    },
  )("law: where chunks end makes no difference", (texts, lengths) => {
    const bytes = encoder.encode(texts.join("\r\n"));
    const chunks: Uint8Array[] = [];
    for (let start = 0; start < bytes.length; ) {
      const length = lengths.next().value;
      chunks.push(bytes.slice(start, start + length));
      start += length;
    }
    expect(byBlocks(chunks, charts, "none")).toBe(bySlowLane(texts, charts, "none"));
  });

  test.prop([fc.string({ unit: "binary" })])("law: what is no person is left to the other way", (text) => {
    const lane = createLane(charts, "automatic");
    const page = createBytePage(1000);
    const bytes = encoder.encode(text);
    expect([lane(bytes, 0, bytes.length, page), page.length]).toEqual([false, 0]);
  });

  test("is taken by nearly all usual lines", () => {
    const lane = createLane(charts.slice(0, 1), "automatic");
    const page = createBytePage(1000);
    const lines = fc.sample(
      fc
        .tuple(
          fc.integer({ min: 360, max: 460 }),
          fc.array(fc.integer({ min: -5, max: 5 }), { minLength: 2, maxLength: 4 }),
        )
        .map(([mm, offs]) =>
          JSON.stringify({ id: mm, readings: { "torso-length": offs.map((off) => `${mm + off} mm`) } }),
        ),
      { numRuns: 400, seed: 3 },
    );
    const taken = lines.filter((text) => {
      const bytes = encoder.encode(text);
      return lane(bytes, 0, bytes.length, page);
    });
    expect(taken.length).toBeGreaterThan(380);
  });
});
