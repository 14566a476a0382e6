import { fc, test } from "@fast-check/vitest";
import {
  anticipateUncertainty,
  combineUncertainties,
  grubbsCriticalValue,
  grubbsTest,
  poolSpread,
  roundingCorrelation,
} from "@tapewise/measurement";
import { expect } from "vitest";
import { conditionsArbitrary, defaultsArbitrary, dimensionArbitrary } from "./measurement-arbitraries.ts";

const positive = fc.double({ min: 1e-3, max: 1e3, noNaN: true });
const component = fc.record({ uncertainty: positive, degreesOfFreedom: positive });

test.prop([fc.array(component, { minLength: 1, maxLength: 8 })])(
  "law: effective degrees of freedom lie between the fewest of a component and their sum",
  (components) => {
    const degrees = components.map(({ degreesOfFreedom }) => degreesOfFreedom);
    const combined = combineUncertainties(components).degreesOfFreedom;
    expect(combined).toBeGreaterThanOrEqual(Math.min(...degrees) * (1 - 1e-12));
    expect(combined).toBeLessThanOrEqual(degrees.reduce((sum, one) => sum + one, 0) * (1 + 1e-12));
  },
);

test.prop([fc.array(component, { minLength: 1, maxLength: 8 }), component])(
  "law: a further component never lowers the combined uncertainty, nor lifts it beyond the plain sum",
  (components, further) => {
    const before = combineUncertainties(components).uncertainty;
    const after = combineUncertainties([...components, further]).uncertainty;
    expect(after).toBeGreaterThanOrEqual(before * (1 - 1e-14));
    expect(after).toBeLessThanOrEqual((before + further.uncertainty) * (1 + 1e-14));
  },
);

test.prop([fc.array(component, { minLength: 1, maxLength: 8 }), positive])(
  "law: components k times as large combine to k times as much with the same degrees of freedom",
  (components, k) => {
    const before = combineUncertainties(components);
    const after = combineUncertainties(
      components.map((one) => ({ ...one, uncertainty: one.uncertainty * k })),
    );
    expect(after.uncertainty / before.uncertainty / k).toBeCloseTo(1, 12);
    expect(after.degreesOfFreedom / before.degreesOfFreedom).toBeCloseTo(1, 12);
  },
);

const spread = fc.record({
  variance: fc.double({ min: 0, max: 1e6, noNaN: true }),
  degreesOfFreedom: positive,
});

test.prop([spread, spread])(
  "law: a pooled spread lies between its parts, and degrees of freedom add",
  (method, sample) => {
    const pooled = poolSpread(method, sample);
    const [low, high] = [method.variance, sample.variance].toSorted((a, b) => a - b);
    expect(pooled.variance).toBeGreaterThanOrEqual((low ?? 0) * (1 - 1e-12));
    expect(pooled.variance).toBeLessThanOrEqual((high ?? 0) * (1 + 1e-12));
    expect(pooled.degreesOfFreedom).toBe(method.degreesOfFreedom + sample.degreesOfFreedom);
  },
);

test.prop([spread, spread, spread])("law: pooling is associative and knows no order", (a, b, c) => {
  const left = poolSpread(poolSpread(a, b), c);
  const right = poolSpread(a, poolSpread(c, b));
  // Below the smallest normal double there are no nine digits to agree in.
  const rounding = Math.max(1e-9 * left.variance, 2 ** -1022);
  expect(Math.abs(left.variance - right.variance)).toBeLessThanOrEqual(rounding);
  expect(left.degreesOfFreedom).toBeCloseTo(right.degreesOfFreedom, 9);
});

test.prop([positive, positive, positive])(
  "law: the correlation of roundings is from 0 to 1, knows no unit and falls with the scatter",
  (scatter, step, factor) => {
    const correlation = roundingCorrelation(scatter, step);
    expect(correlation).toBeGreaterThanOrEqual(0);
    expect(correlation).toBeLessThanOrEqual(1);
    expect(Math.abs(roundingCorrelation(scatter * factor, step * factor) - correlation)).toBeLessThan(1e-12);
    expect(roundingCorrelation(scatter * (1 + factor), step)).toBeLessThanOrEqual(correlation);
  },
);

const values = fc.array(fc.integer({ min: 300, max: 600 }), { minLength: 3, maxLength: 20 });

test.prop([values, fc.integer({ min: -1000, max: 1000 }), fc.constantFrom(2, 0.5, 4, -1)])(
  "law: Grubbs' statistic knows neither shift nor scale, and never exceeds (n − 1)/√n",
  (list, shift, scale) => {
    const { statistic } = grubbsTest(list, 0.05);
    expect(
      grubbsTest(
        list.map((value) => scale * value + shift),
        0.05,
      ).statistic,
    ).toBeCloseTo(statistic, 9);
    expect(statistic).toBeLessThanOrEqual(((list.length - 1) / Math.sqrt(list.length)) * (1 + 1e-12));
  },
);

test.prop([fc.integer({ min: 3, max: 500 }), fc.double({ min: 1e-6, max: 0.5, noNaN: true })])(
  "law: Grubbs' critical value rises with the number of values and falls with the significance",
  (count, significance) => {
    const value = grubbsCriticalValue(count, significance);
    expect(grubbsCriticalValue(count + 1, significance)).toBeGreaterThan(value);
    expect(grubbsCriticalValue(count, significance * 1.5)).toBeLessThan(value);
  },
);

test.prop([
  dimensionArbitrary,
  fc.double({ min: 100, max: 2000, noNaN: true }),
  fc.integer({ min: 1, max: 1000 }),
  fc.constantFrom(0, 0.1, 1, 3.175, 10, 25.4),
  conditionsArbitrary,
  defaultsArbitrary,
])(
  "law: one reading more is never expected to raise the uncertainty",
  (dimension, lengthMm, count, stepMm, conditions, defaults) => {
    const ahead = (further: number) =>
      anticipateUncertainty({ dimension, lengthMm, count: count + further, stepMm, conditions, defaults });
    expect(ahead(1)).toBeLessThanOrEqual(ahead(0) * (1 + 1e-9));
  },
);
