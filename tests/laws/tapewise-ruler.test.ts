import { fc, test } from "@fast-check/vitest";
import { interval } from "@tapewise/intervals";
import { describe, expect } from "vitest";
import { drawRuler } from "../../packages/tapewise/src/command/picture/draw-ruler.ts";
import { columnOf, makeScale, marksOf } from "../../packages/tapewise/src/command/picture/scale.ts";

const length = fc.double({ min: 100, max: 2500, noNaN: true });
const unit = fc.constantFrom("cm" as const, "in" as const);
const size = fc.record({
  label: fc.string({ minLength: 1, maxLength: 20, unit: "grapheme-ascii" }),
  interval: fc
    .tuple(length, length, fc.boolean(), fc.boolean())
    .map(([a, b, below, above]) =>
      interval(below ? -Infinity : Math.min(a, b), above ? Infinity : Math.max(a, b)),
    ),
  inferred: fc.boolean(),
  note: fc.constantFrom("", "<1 %", "93 %"),
});
const body = fc
  .tuple(length, length, length)
  .map((three) => three.toSorted((a, b) => a - b))
  .map(([lowerMm = 0, meanMm = 0, upperMm = 0]) => ({
    label: "you",
    lowerMm,
    meanMm,
    upperMm,
    note: "44.0",
  }));

describe("a ruler", () => {
  test.prop([fc.array(size, { minLength: 1, maxLength: 8 }), fc.array(body, { maxLength: 2 }), unit])(
    "law: is plain ASCII on a page of 80 characters, with a row for each size and each body",
    (sizes, bodies, shown) => {
      const lines = drawRuler({ sizes, bodies, unit: shown });
      expect(lines).toHaveLength(2 + sizes.length + bodies.length);
      for (const line of lines) {
        expect(line.length).toBeLessThanOrEqual(80);
        expect(line).toMatch(/^[ -~]*$/);
      }
    },
  );

  test.prop([length, length, length, unit])("law: the longer stands further right", (a, b, c, shown) => {
    const [low = 0, middle = 0, high = 0] = [a, b, c].toSorted((one, other) => one - other);
    const scale = makeScale([low, high], shown, 60);
    expect(columnOf(scale, low)).toBeLessThanOrEqual(columnOf(scale, middle));
    expect(columnOf(scale, middle)).toBeLessThanOrEqual(columnOf(scale, high));
    expect(columnOf(scale, low)).toBeGreaterThanOrEqual(0);
    expect(columnOf(scale, high)).toBeLessThan(60);
  });

  test.prop([fc.array(length, { minLength: 1, maxLength: 6 }), unit, fc.integer({ min: 20, max: 120 })])(
    "law: holds every length with air on both sides, between whole marks of its unit",
    (lengths, shown, columns) => {
      const scale = makeScale(lengths, shown, columns);
      expect(scale.fromMm).toBeLessThan(Math.min(...lengths));
      expect(scale.toMm).toBeGreaterThan(Math.max(...lengths));
      const marks = marksOf(scale);
      const perUnit = shown === "cm" ? 10 : 12.7;
      for (const mark of marks)
        expect(Math.abs(mark / perUnit - Math.round(mark / perUnit))).toBeLessThan(1e-6);
      expect(marks.length).toBeLessThanOrEqual(Math.max(2, Math.floor((columns - 1) / 6) + 1));
    },
  );
});
