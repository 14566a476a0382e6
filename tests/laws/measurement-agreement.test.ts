import { fc, test } from "@fast-check/vitest";
import {
  blandAltman,
  blandAltmanRepeats,
  createStudy,
  intraclassCorrelations,
  minimalDetectableChange,
  oneWayAnova,
  repeatabilityCoefficient,
  type Study,
  safeComponentIcc,
  safeVarianceComponents,
  twoWayAnova,
} from "@tapewise/measurement";
import { unwrap } from "@tapewise/outcome";
import { millimetres } from "@tapewise/units";
import { describe, expect } from "vitest";
import { gatherCells } from "../../packages/measurement/src/reliability/reml-cells.ts";
import { remlCriterion } from "../../packages/measurement/src/reliability/reml-criterion.ts";
import { fitReml } from "../../packages/measurement/src/reliability/reml-fit.ts";
import { fixedSquares } from "../../packages/measurement/src/reliability/reml-fixed-squares.ts";

/** Tenths of a millimetre about a length: readings as people write them, with ties now and then. */
const error = fc.integer({ min: -150, max: 150 }).map((tenths) => tenths / 10);
const level = fc.integer({ min: 3800, max: 5200 }).map((tenths) => tenths / 10);

/** A complete table of repeats: subjects × measurers × repeats. */
function tableOf(subjects: number, measurers: number, repeats: number): fc.Arbitrary<number[][][]> {
  return fc
    .tuple(
      fc.array(level, { minLength: subjects, maxLength: subjects }),
      fc.array(error, { minLength: measurers, maxLength: measurers }),
      fc.array(error, {
        minLength: subjects * measurers * repeats,
        maxLength: subjects * measurers * repeats,
      }),
    )
    .map(([levels, shifts, errors]) =>
      levels.map((own, s) =>
        shifts.map((shift, m) =>
          Array.from(
            { length: repeats },
            (_, r) => own + shift + (errors[(s * measurers + m) * repeats + r] ?? 0),
          ),
        ),
      ),
    );
}

function studyOf(rows: readonly (readonly (readonly number[])[])[]): Study {
  return createStudy({
    readings: rows.flatMap((row, s) =>
      row.flatMap((cell, m) =>
        cell.map((mm, r) => ({ subject: `s${s}`, measurer: `m${m}`, repeat: r + 1, mm: millimetres(mm) })),
      ),
    ),
  });
}

/** The same with some cells emptied, but never a subject's or a measurer's last one. */
const gappy = fc
  .tuple(tableOf(7, 3, 2), fc.array(fc.integer({ min: 0, max: 2 }), { minLength: 21, maxLength: 21 }))
  .map(([rows, kept]) =>
    rows.map((row, s) =>
      row.map((cell, m) => (m === s % 3 || s === m ? cell : cell.slice(0, kept[s * 3 + m] ?? 0))),
    ),
  );

const near = (actual: number, expected: number, scale: number): void => {
  // Two ends that are nowhere are the same.
  if (actual === expected) return;
  expect(Math.abs(actual - expected), `${actual} against ${expected}`).toBeLessThanOrEqual(scale);
};

describe("variance components", () => {
  test.prop([tableOf(6, 3, 1)])(
    "law: on a complete table REML is the analysis of variance, if none is at 0",
    (rows) => {
      const { subjects, measurers, residual } = twoWayAnova(rows.map((row) => row.flat()));
      fc.pre(residual.meanSquare > 1e-3);
      fc.pre(subjects.meanSquare > residual.meanSquare && measurers.meanSquare > residual.meanSquare);
      const parts = unwrap(safeVarianceComponents(studyOf(rows), { terms: ["measurer"] }));
      const scale = 1e-7 * (subjects.meanSquare + measurers.meanSquare);
      near(parts.residualVariance, residual.meanSquare, 1e-7 * residual.meanSquare);
      near(parts.subjectVariance, (subjects.meanSquare - residual.meanSquare) / 3, scale);
      near(parts.measurerVariance ?? 0, (measurers.meanSquare - residual.meanSquare) / 6, scale);
    },
  );

  test.prop([tableOf(5, 3, 2)])("law: with repeats too, interaction and all", (rows) => {
    const means = rows.map((row) => row.map((cell) => ((cell[0] ?? 0) + (cell[1] ?? 0)) / 2));
    const within = rows.flat().reduce((sum, [a = 0, b = 0]) => sum + (a - b) ** 2 / 2, 0) / 15;
    const { subjects, measurers, residual } = twoWayAnova(means);
    // Mean squares of cell means; σ²ₛₘ + σ²ₑ/2 is what subjects and measurers are seen against.
    fc.pre(within > 1e-3 && residual.meanSquare > within / 2);
    fc.pre(subjects.meanSquare > residual.meanSquare && measurers.meanSquare > residual.meanSquare);
    const parts = unwrap(safeVarianceComponents(studyOf(rows)));
    const scale = 1e-7 * (subjects.meanSquare + measurers.meanSquare + within);
    near(parts.residualVariance, within, 1e-7 * within);
    near(parts.interactionVariance ?? 0, residual.meanSquare - within / 2, scale);
    near(parts.subjectVariance, (subjects.meanSquare - residual.meanSquare) / 3, scale);
    near(parts.measurerVariance ?? 0, (measurers.meanSquare - residual.meanSquare) / 5, scale);
  });

  test.prop([gappy, fc.array(fc.double({ min: 0, max: 50, noNaN: true }), { minLength: 3, maxLength: 3 })])(
    "law: no other ratios have a greater likelihood",
    (rows, [a = 0, b = 0, c = 0]) => {
      const data = gatherCells(studyOf(rows));
      fc.pre(data.squaresWithin > 1);
      const { criterion, ratios } = fitReml(data, [true, true, true]);
      const slack = 1e-9 * (1 + Math.abs(criterion));
      expect(remlCriterion(data, [a, b, c]).criterion).toBeGreaterThanOrEqual(criterion - slack);
      const [s, m, i] = ratios;
      for (const by of [0.9, 1.1]) {
        for (const other of [
          [s * by, m, i],
          [s, m * by, i],
          [s, m, i * by],
        ] as const) {
          expect(remlCriterion(data, other).criterion).toBeGreaterThanOrEqual(criterion - slack);
        }
      }
    },
  );

  test.prop([
    gappy,
    fc.array(fc.double({ min: 0.01, max: 20, noNaN: true }), { minLength: 3, maxLength: 3 }),
  ])("law: the slope is that of the criterion", (rows, [a = 1, b = 1, c = 1]) => {
    const data = gatherCells(studyOf(rows));
    fc.pre(data.squaresWithin > 1);
    const { slope } = remlCriterion(data, [a, b, c]);
    [0, 1, 2].forEach((i) => {
      const at = (by: number): number => {
        const [x = 0, y = 0, z = 0] = [a, b, c].map((ratio, j) => (i === j ? ratio * (1 + by) : ratio));
        return remlCriterion(data, [x, y, z]).criterion;
      };
      const [step, ratio] = [1e-4, [a, b, c][i] ?? 1];
      near(
        (at(step) - at(-step)) / (2 * step * ratio),
        slope[i] ?? 0,
        1e-5 * (1 / ratio + Math.abs(slope[i] ?? 0)),
      );
    });
  });

  test.prop([gappy, fc.integer({ min: 1, max: 300 }), fc.constantFrom(0.1, 10)])(
    "law: a shift of all readings changes nothing, a unit only the unit",
    (rows, shift, unit) => {
      const plain = safeVarianceComponents(studyOf(rows), { terms: ["measurer"] });
      fc.pre(plain.ok && plain.value.residualVariance > 1e-3);
      const parts = unwrap(plain);
      const change = (by: (mm: number) => number) =>
        unwrap(
          safeVarianceComponents(studyOf(rows.map((row) => row.map((cell) => cell.map(by)))), {
            terms: ["measurer"],
          }),
        );
      const scale = 1e-6 * (parts.subjectVariance + parts.residualVariance);
      near(change((mm) => mm + shift).subjectVariance, parts.subjectVariance, scale);
      near(change((mm) => mm * unit).subjectVariance / unit ** 2, parts.subjectVariance, scale);
      near(change((mm) => mm * unit).residualVariance / unit ** 2, parts.residualVariance, scale);
    },
  );

  test.prop([tableOf(5, 3, 1)])(
    "law: fixed subjects and measurers leave what the analysis of variance leaves",
    (rows) => {
      const { residual, subjects } = twoWayAnova(rows.map((row) => row.flat()));
      const left = fixedSquares(gatherCells(studyOf(rows)), true);
      near(left, residual.sumOfSquares, 1e-12 * (1 + subjects.sumOfSquares));
    },
  );
});

describe("intraclass correlations", () => {
  const table = tableOf(5, 3, 1).map((rows) => rows.map((row) => row.flat()));

  test.prop([table, fc.integer({ min: -200, max: 200 })])(
    "law: neither a shift nor the order matters",
    (rows, shift) => {
      fc.pre(twoWayAnova(rows).residual.meanSquare > 1e-3);
      const { icc } = intraclassCorrelations(rows);
      const moved = intraclassCorrelations(
        rows.map((row) => row.map((value) => value + shift)).reverse(),
      ).icc;
      const turned = intraclassCorrelations(rows.map((row) => [...row].reverse())).icc;
      for (const form of ["1,1", "2,1", "3,1", "1,k", "2,k", "3,k"] as const) {
        for (const other of [moved, turned]) {
          near(other[form].value, icc[form].value, 1e-8 * (1 + Math.abs(icc[form].value)));
          near(other[form].lower, icc[form].lower, 1e-6 * (1 + Math.abs(icc[form].lower)));
          near(other[form].upper, icc[form].upper, 1e-6 * (1 + Math.abs(icc[form].upper)));
        }
      }
    },
  );

  test.prop([table])(
    "law: a value lies in its interval, and means are stepped up by Spearman and Brown",
    (rows) => {
      fc.pre(twoWayAnova(rows).residual.meanSquare > 1e-3);
      const { icc } = intraclassCorrelations(rows);
      for (const { value, lower, upper } of Object.values(icc)) {
        expect(lower).toBeLessThanOrEqual(value);
        expect(upper).toBeGreaterThanOrEqual(value);
        expect(upper).toBeLessThanOrEqual(1);
      }
      for (const kind of ["1", "2", "3"] as const) {
        const { value } = icc[`${kind},1`];
        fc.pre(1 + 2 * value > 0.01);
        near(
          icc[`${kind},k`].value,
          (3 * value) / (1 + 2 * value),
          1e-9 * (1 + Math.abs(icc[`${kind},k`].value)),
        );
      }
    },
  );

  test.prop([tableOf(5, 3, 1)])("law: components of a complete table give ICC(2,1) and ICC(3,1)", (rows) => {
    const flat = rows.map((row) => row.flat());
    const { subjects, measurers, residual } = twoWayAnova(flat);
    fc.pre(residual.meanSquare > 1e-3);
    fc.pre(subjects.meanSquare > residual.meanSquare && measurers.meanSquare > residual.meanSquare);
    const { icc } = intraclassCorrelations(flat);
    const { agreement, consistency } = unwrap(safeComponentIcc(studyOf(rows), { draws: 100 }));
    near(agreement.value, icc["2,1"].value, 1e-7);
    near(consistency.value, icc["3,1"].value, 1e-7);
  });

  test.prop([table])("law: one-way and two-way analyses share the squares between subjects", (rows) => {
    const one = oneWayAnova(rows);
    const two = twoWayAnova(rows);
    near(one.between.sumOfSquares, two.subjects.sumOfSquares, 1e-10 * (1 + one.between.sumOfSquares));
    near(
      one.within.sumOfSquares,
      two.measurers.sumOfSquares + two.residual.sumOfSquares,
      1e-10 * (1 + one.within.sumOfSquares),
    );
  });
});

describe("limits of agreement", () => {
  const pairs = fc.array(fc.tuple(level, error), { minLength: 3, maxLength: 12 });

  test.prop([pairs])("law: to exchange the two turns everything round", (rows) => {
    const first = rows.map(([own]) => own);
    const second = rows.map(([own, off]) => own + off);
    fc.pre(new Set(rows.map(([, off]) => off)).size > 1);
    const [there, back] = [blandAltman(first, second), blandAltman(second, first)];
    near(back.bias.value, -there.bias.value, 1e-9);
    near(back.lowerLimit.lower, -there.upperLimit.upper, 1e-9 * (1 + Math.abs(there.upperLimit.upper)));
    near(back.upperLimit.lower, -there.lowerLimit.upper, 1e-9 * (1 + Math.abs(there.lowerLimit.upper)));
    near(back.slope?.value ?? 0, -(there.slope?.value ?? 0), 1e-9 * (1 + Math.abs(there.slope?.value ?? 0)));
  });

  test.prop([pairs])("law: an exact interval holds its limit's estimate and leans outwards", (rows) => {
    fc.pre(new Set(rows.map(([, off]) => off)).size > 1);
    const { bias, lowerLimit, upperLimit } = blandAltman(
      rows.map(([own]) => own),
      rows.map(([own, off]) => own + off),
    );
    expect(bias.lower).toBeLessThan(bias.upper);
    expect(upperLimit.upper - upperLimit.value).toBeGreaterThan(upperLimit.value - upperLimit.lower);
    expect(lowerLimit.value - lowerLimit.lower).toBeGreaterThan(lowerLimit.upper - lowerLimit.value);
    expect(upperLimit.lower).toBeLessThan(upperLimit.value);
  });

  test.prop([fc.array(fc.tuple(level, error, error), { minLength: 3, maxLength: 8 })])(
    "law: as many repeats of everybody, constant or varying, have the same bias",
    (rows) => {
      const subjects = rows.map(([own, a, b]) => ({ first: [own, own + a], second: [own + b, own] }));
      fc.pre(new Set(rows.map(([, a, b]) => a - b)).size > 1);
      const [constant, varying] = (["constant", "varying"] as const).map((trueValue) =>
        blandAltmanRepeats(subjects, { trueValue }),
      );
      near(constant?.bias.value ?? 0, varying?.bias.value ?? 1, 1e-9);
    },
  );

  test.prop([fc.array(fc.tuple(level, error), { minLength: 2, maxLength: 8 })])(
    "law: the repeatability coefficient is the detectable change, but for 1.96",
    (rows) => {
      const { coefficient, withinSd } = repeatabilityCoefficient(rows.map(([own, off]) => [own, own + off]));
      near(coefficient.value, minimalDetectableChange(withinSd), 3e-5 * coefficient.value + 1e-12);
    },
  );
});
