import { fc, test } from "@fast-check/vitest";
import { type SizeChart, safeParseChart } from "@tapewise/charts";
import { unwrap } from "@tapewise/outcome";
import { answerRawLine, type BatchLine, chooseLine, createLineSplitter, type RawLine } from "tapewise/batch";
import { describe, expect } from "vitest";

const centimetres = unwrap(
  safeParseChart(
    "size,torso-length (cm),hip-belt-girth (cm)\nS,38.1-43.18,71.12-96.52\nM,41.91-48.26,76.2-106.68\n",
    { chart: "C" },
  ),
);
const inches = unwrap(
  safeParseChart(
    JSON.stringify({
      chart: "C",
      sizes: [
        {
          size: "S",
          "torso-length": { from: "15 in", to: "17 in" },
          "hip-belt-girth": { from: "28 in", to: "38 in" },
        },
        {
          size: "M",
          "torso-length": { from: "16.5 in", to: "19 in" },
          "hip-belt-girth": { from: "30 in", to: "42 in" },
        },
      ],
    }),
    { format: "json" },
  ),
);

/** Whole eighths of an inch: what both scales of a tape can say exactly. */
const eighths = (low: number, high: number) => fc.integer({ min: low * 8, max: high * 8 });
const inInches = (count: number) => `${count / 8} in`;
// An eighth of an inch is 3.175 mm exactly. A fourth decimal keeps three from being taken for thousands.
const inMillimetres = (count: number) => `${(count * 3.175).toFixed(4)} mm`;
const inCentimetres = (count: number) => `${(count * 0.3175).toFixed(4)} cm`;

const known = { biasMm: 5, repeatMm: 7, resolutionMm: 3.175 };
const readings = fc.record({
  torso: fc.array(eighths(14, 20), { minLength: 1, maxLength: 6 }),
  belt: fc.array(eighths(27, 45), { minLength: 0, maxLength: 3 }),
});

const ask = (
  write: (count: number) => string,
  { torso, belt }: { torso: number[]; belt: number[] },
  chart: SizeChart,
): BatchLine => {
  const person = {
    id: 1,
    error: known,
    readings: { "torso-length": torso.map(write), "hip-belt-girth": belt.map(write) },
  };
  return chooseLine(JSON.stringify(person), [chart]);
};

/** An answer without its issues, whose texts show the readings as they were written. */
const withoutIssues = ({ issues: _, ...rest }: BatchLine): object => rest;

describe("a batch line", () => {
  test.prop([readings])("law: inches, centimetres and millimetres of one length give one answer", (taken) => {
    const answer = withoutIssues(ask(inInches, taken, inches));
    expect(answer).toHaveProperty("choices");
    expect(withoutIssues(ask(inCentimetres, taken, inches))).toEqual(answer);
    expect(withoutIssues(ask(inMillimetres, taken, inches))).toEqual(answer);
  });

  test.prop([readings])(
    "law: a chart as CSV in centimetres and as JSON in inches gives one answer",
    (taken) => {
      expect(withoutIssues(ask(inInches, taken, centimetres))).toEqual(
        withoutIssues(ask(inInches, taken, inches)),
      );
    },
  );

  test.prop([readings, fc.infiniteStream(fc.nat())])(
    "law: the order of readings makes no difference",
    (taken, random) => {
      const shuffled = (list: readonly number[]) =>
        list
          .map((value) => ({ value, key: random.next().value }))
          .sort((a, b) => a.key - b.key)
          .map(({ value }) => value);
      const other = { torso: shuffled(taken.torso), belt: shuffled(taken.belt) };
      expect(withoutIssues(ask(inInches, other, inches))).toEqual(
        withoutIssues(ask(inInches, taken, inches)),
      );
    },
  );

  test.prop([fc.string({ unit: "binary" })])(
    "law: whatever the text is, the answer is a choice or issues",
    (text) => {
      const answer = chooseLine(text, [inches]);
      expect("choices" in answer || answer.issues.length > 0).toBe(true);
      expect(JSON.parse(JSON.stringify(answer))).toEqual(answer);
    },
  );

  test.prop([fc.jsonValue()])("law: whatever the JSON is, the answer is a choice or issues", (value) => {
    for (const one of [
      value,
      { readings: value },
      { readings: { "torso-length": value } },
      { id: value, readings: { "torso-length": ["44 cm"] } },
    ]) {
      const answer = chooseLine(JSON.stringify(one), [inches]);
      expect("choices" in answer || answer.issues.length > 0).toBe(true);
    }
  });
});

describe("a batch", () => {
  const line = fc.oneof(
    eighths(14, 20).map((count) => `{"id":${count},"readings":{"torso-length":["${inInches(count)}"]}}`),
    fc.constantFrom("", "   ", "{", '{"id":1}', `{"note":"${"é".repeat(40)}"}`, "[1,2]"),
  );

  test.prop([
    fc.array(line, { maxLength: 12 }),
    fc.constantFrom("\n", "\r\n"),
    fc.boolean(),
    fc.infiniteStream(fc.integer({ min: 1, max: 50 })),
  ])("law: where the chunks of the input end makes no difference", (lines, end, ended, lengths) => {
    const bytes = new TextEncoder().encode(lines.join(end) + (ended ? end : ""));
    const whole = answerAll([bytes]);
    const chunks: Uint8Array[] = [];
    for (let start = 0; start < bytes.length; ) {
      const length = lengths.next().value;
      chunks.push(bytes.slice(start, start + length));
      start += length;
    }
    expect(answerAll(chunks)).toEqual(whole);
    expect(whole).toHaveLength(lines.filter((text) => text.trim() !== "").length);
  });

  test.prop([fc.array(line, { maxLength: 8 }), fc.array(line, { maxLength: 8 })])(
    "law: a batch in two parts gives the answers of the whole, so that any engine may cut it",
    (first, second) => {
      const numberless = (answers: readonly (BatchLine | undefined)[]) =>
        answers.map((answer) => JSON.stringify(answer).replace(/"message":"line \d+ |"line":\d+/g, ""));
      const of = (lines: readonly string[]) =>
        answerAll([new TextEncoder().encode(lines.map((text) => `${text}\n`).join(""))]);
      expect(numberless([...of(first), ...of(second)])).toEqual(numberless(of([...first, ...second])));
    },
  );
});

function answerAll(chunks: readonly Uint8Array[]): readonly (BatchLine | undefined)[] {
  const splitter = createLineSplitter(1000);
  const lines: RawLine[] = chunks.flatMap((chunk) => [...splitter.push(chunk)]);
  lines.push(...splitter.end());
  return lines.map((raw) => answerRawLine(raw, [inches])).filter((answer) => answer !== undefined);
}
