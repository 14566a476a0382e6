import { fc, test } from "@fast-check/vitest";
import {
  createStudy,
  type Study,
  safePrecision,
  safeRepeatTrend,
  safeTechnicalError,
} from "@tapewise/measurement";
import { unwrap } from "@tapewise/outcome";
import { millimetres } from "@tapewise/units";
import { describe, expect, test as plainTest } from "vitest";
import { temCase } from "../../reference-checks/reliability-coverage/tem.ts";

/** Any study in half millimetres with missing cells, in which two readings of one cell and two of one subject are sure. */
const studies = fc
  .array(fc.option(fc.integer({ min: 800, max: 1000 }), { freq: 4 }), { minLength: 12, maxLength: 48 })
  .map((halves) => {
    const readings = halves.flatMap((half, index) => {
      const cell = {
        subject: `s${Math.floor(index / 6)}`,
        measurer: `m${Math.floor(index / 2) % 3}`,
        repeat: (index % 2) + 1,
      };
      const value = half ?? (index < 4 ? 900 + index : undefined);
      return value === undefined ? [] : [{ ...cell, mm: millimetres(value / 2) }];
    });
    return createStudy({ readings });
  });

const moved = (study: Study, change: (mm: number, subject: string) => number): Study =>
  createStudy({
    readings: study.readings.map((reading) => ({
      ...reading,
      mm: millimetres(change(reading.mm, reading.subject)),
    })),
  });

const figures = (study: Study): number[] => {
  const { intra, inter, total } = unwrap(safeTechnicalError(study));
  const { betweenMm, reproducibilityMm } = unwrap(safePrecision(study));
  return [
    ...[intra, inter, total].flatMap((tem) => Object.values(tem?.mm ?? {})),
    betweenMm,
    reproducibilityMm,
  ];
};

const expectClose = (found: readonly number[], expected: readonly number[]): void => {
  expect(found).toHaveLength(expected.length);
  found.forEach((value, index) => {
    expect(Math.abs(value - (expected[index] ?? 0))).toBeLessThan(
      1e-6 * (1 + Math.abs(expected[index] ?? 0)),
    );
  });
};

describe("errors of a study", () => {
  test.prop([studies])("law: every figure is finite, and lies in its interval", (study) => {
    const { perMeasurer, intra, inter, total } = unwrap(safeTechnicalError(study));
    for (const tem of [...perMeasurer.map((each) => each.tem), intra, inter, total]) {
      if (tem === undefined) continue;
      expect(tem.mm.lower).toBeLessThanOrEqual(tem.mm.value);
      expect(tem.mm.upper).toBeGreaterThanOrEqual(tem.mm.value);
      expect(tem.mm.upper).toBeLessThan(Number.POSITIVE_INFINITY);
    }
  });

  test.prop([studies, fc.integer({ min: 1, max: 50 })])(
    "law: errors do not change when a subject is longer by any amount",
    (study, growth) => {
      expectClose(
        figures(moved(study, (mm, subject) => mm + growth * Number(subject.slice(1)))),
        figures(study),
      );
    },
  );

  test.prop([studies, fc.integer({ min: 2, max: 8 })])(
    "law: errors scale with the lengths",
    (study, times) => {
      const expected = figures(study).map((figure) => figure * times);
      expectClose(figures(moved(study, (mm) => mm * times)), expected);
    },
  );

  test.prop([studies, fc.integer()])("law: the order of readings changes nothing", (study, seed) => {
    const readings = [...study.readings].sort(
      (a, b) => ((a.mm * 7919 + seed) % 13) - ((b.mm * 7919 + seed) % 13),
    );
    expectClose(figures(createStudy({ readings })), figures(study));
  });

  test.prop([studies])(
    "law: the error within all measurers is the mean of theirs by degrees of freedom",
    (study) => {
      const { perMeasurer, intra } = unwrap(safeTechnicalError(study));
      const sum = perMeasurer.reduce((all, { tem }) => all + tem.degreesOfFreedom * tem.mm.value ** 2, 0);
      expect((intra?.mm.value ?? 0) ** 2 * (intra?.degreesOfFreedom ?? 0)).toBeCloseTo(sum, 6);
    },
  );

  test.prop([studies, fc.integer({ min: -20, max: 20 })])(
    "law: a drift that is added to all repeats is added to the trend",
    (study, drift) => {
      const drifted = createStudy({
        readings: study.readings.map((reading) => ({
          ...reading,
          mm: millimetres(reading.mm + drift * reading.repeat),
        })),
      });
      const before = safeRepeatTrend(study);
      const after = safeRepeatTrend(drifted);
      expect(after.ok).toBe(before.ok);
      if (!before.ok || !after.ok) return;
      expect(after.value.all.slope.value - before.value.all.slope.value).toBeCloseTo(drift, 8);
      expect(after.value.all.standardErrorMm).toBeCloseTo(before.value.all.standardErrorMm, 8);
    },
  );
});

describe("law: intervals hold the true error as often as they say", () => {
  const design = { subjects: 12, measurers: 3, repeats: 2, measurer: 4, interaction: 3, error: 5 };
  const runs = 1500;
  // Nominal 95 % may be 94 to 96 %; 1 500 draws add four standard errors, 4 √(0.95 · 0.05 / 1500) = 2.3 %.
  const slack = 0.01 + 4 * Math.sqrt((0.95 * 0.05) / runs);
  plainTest.each([
    ["intra", design],
    ["inter", design],
    ["total", { ...design, missing: 0.2 }],
  ] as const)("%s", (figure, own) => {
    const { covered } = temCase(figure, own).run(runs, 20260301);
    expect(Math.abs(covered / runs - 0.95)).toBeLessThan(slack);
  });
});
